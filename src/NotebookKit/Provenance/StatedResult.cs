namespace NotebookKit.Provenance;

/// <summary>A result whose title, findings and working come from the model that made it.</summary>
public abstract record StatedResult : IResult
{
    /// <inheritdoc/>
    public required string Title { get; init; }

    /// <inheritdoc/>
    public abstract ModelCard Model { get; }

    /// <inheritdoc/>
    public virtual ResultStatus Status => ResultStatus.Completed;

    /// <inheritdoc/>
    public abstract IReadOnlyList<ResultLine> Lines { get; }

    /// <inheritdoc/>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public abstract IReadOnlyList<Caution> Cautions { get; }

    /// <inheritdoc/>
    public required Working Working { get; init; }
}
