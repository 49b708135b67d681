using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>What every answer about one way an end can fail shows of itself.</summary>
public abstract record EndModeResult : Result
{
    /// <inheritdoc/>
    public override ResultStatus Status => HasError ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;
}
