namespace NotebookKit.Provenance;

/// <summary>
/// A result that words its own title and working from what it holds. It counts as completed and has nothing to report unless it says
/// otherwise.
/// </summary>
public abstract record Result : IResult
{
    /// <inheritdoc/>
    public abstract string Title { get; }

    /// <inheritdoc/>
    public abstract ModelCard Model { get; }

    /// <inheritdoc/>
    public virtual ResultStatus Status { get; internal init; } = ResultStatus.Completed;

    /// <inheritdoc/>
    public abstract IReadOnlyList<ResultLine> Lines { get; }

    /// <inheritdoc/>
    public virtual IReadOnlyList<Finding> Findings { get; internal init; } = [];

    /// <inheritdoc/>
    public abstract IReadOnlyList<Caution> Cautions { get; }

    /// <inheritdoc/>
    public abstract Working Working { get; }

    /// <summary>Whether a finding forbids the use of the result.</summary>
    protected bool HasError => Findings.Any(f => f.Severity == FindingSeverity.Error);
}
