using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>One vessel, or a piece of one, tested with water, and what had been predicted of each of its parts.</summary>
/// <param name="Id">Name or number of the very vessel: two tests of one vessel aren't two witnesses.</param>
/// <param name="Pressure">Highest pressure it saw; 0.5 to 1000 bar gauge.</param>
/// <param name="Parts">Every part that was under load, as predicted for this very vessel; of a test of an end alone, the end's.</param>
public abstract record PartTest(string Id, GaugePressure Pressure, IReadOnlyList<PredictedPart> Parts)
{
    /// <summary>
    /// Batch it was made in: the same hands, roll of sleeve, resin and season. Another batch has a mean of its own, within a standard
    /// deviation of 10 % (common practice, no source). Empty where none is given: all such tests are one batch.
    /// </summary>
    public string Batch { get; init; } = "";

    /// <summary>The part that gave way; none where all held.</summary>
    internal virtual string? FailedPart => null;

    /// <summary>Whether the part gave way, or one of the same design at the other end did.</summary>
    internal bool HasFailed(PredictedPart part) =>
        FailedPart is { } failed && (part.Is(failed) || (this is PartBurst { AtOtherEnd: { } like } && part.Is(like)));
}
