using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>A test that ended because a part gave way; all others held at least as much.</summary>
/// <param name="Id">Name or number of the very vessel: two tests of one vessel aren't two witnesses.</param>
/// <param name="Pressure">Pressure at which it gave way; 0.5 to 1000 bar gauge.</param>
/// <param name="Failed">The part that gave way first.</param>
/// <param name="Parts">Every part that was under load, as predicted for this very vessel.</param>
public sealed record PartBurst(string Id, GaugePressure Pressure, string Failed, IReadOnlyList<PredictedPart> Parts)
    : PartTest(Id, Pressure, Parts)
{
    /// <inheritdoc/>
    internal override string? FailedPart => Failed;

    /// <summary>Part of the vessel in hand that is of the design that gave way, at its other end; none where there is none.</summary>
    internal string? AtOtherEnd { get; init; }
}
