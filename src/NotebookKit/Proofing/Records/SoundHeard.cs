using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Proofing.Records;

/// <summary>A sound that the vessel made during a proof.</summary>
/// <param name="Kind">What was heard.</param>
/// <param name="At">Pressure at which it was heard; 0 to 300 bar gauge.</param>
public sealed record SoundHeard(SoundKind Kind, GaugePressure At)
{
    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            Enum.IsDefined(Kind) ? null : ProofingFindings.SoundUnknown(Kind.ToString(), Enum.GetNames<SoundKind>()),
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(At, "pressure at which a sound was heard",
                "Check the unit it was given in."),
        }.OfType<Finding>().ToList();
}

/// <summary>What was heard.</summary>
public enum SoundKind
{
    /// <summary>Ticking, many and faint: resin that cracks, as a first loading brings it.</summary>
    Ticking,

    /// <summary>One loud crack: a fibre bundle, a bond or a closure that moved.</summary>
    Crack,
}
