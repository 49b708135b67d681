using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

/// <summary>All that propulsion and filling need to know of a vessel: how much it holds, how wide it is, what it may be filled to.</summary>
/// <param name="Volume">Internal volume; above 0.</param>
/// <param name="Bore">Internal diameter; above 0.</param>
/// <param name="RatedPressure">Highest pressure it may be filled to; above 0.</param>
public sealed record Chamber(Volume Volume, Length Bore, GaugePressure RatedPressure)
{
    /// <summary>Highest pressure it is expected ever to see over the rated one [-], as its rule set has it; 1 to 1.5, 1.05 unless given (common practice, no source).</summary>
    public double Overshoot { get; init; } = 1.05;

    /// <summary>Highest pressure it is expected ever to see (MEOP): rated pressure with regulator creep and warming. Source: the rule set's overshoot.</summary>
    public GaugePressure MaximumExpectedPressure => RatedPressure * Overshoot;
}
