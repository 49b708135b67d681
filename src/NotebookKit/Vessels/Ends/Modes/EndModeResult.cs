using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>What every answer about one way an end can fail shows of itself.</summary>
public abstract record EndModeResult : IResult
{
    /// <inheritdoc/>
    public abstract string Title { get; }

    /// <inheritdoc/>
    public abstract ModelCard Model { get; }

    /// <inheritdoc/>
    public ResultStatus Status => Findings.Any(f => f.Severity == FindingSeverity.Error) ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public abstract IReadOnlyList<ResultLine> Lines { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <inheritdoc/>
    public IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public abstract Working Working { get; }
}
