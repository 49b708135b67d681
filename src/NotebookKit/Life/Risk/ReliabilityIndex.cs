using MathNet.Numerics.Distributions;
using NotebookKit.Numerics.Functions;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Life.Risk;

/// <summary>How many standard deviations lie between what is usual and failure.</summary>
/// <param name="Beta">The index [-].</param>
/// <remarks>Chance Φ(−β). Source: EN 1990, reliability index and failure probability.</remarks>
public sealed record ReliabilityIndex(double Beta)
{
    /// <summary>Chance of failure [-]. Source: EN 1990.</summary>
    public double Chance => Normal.CDF(0, 1, -Beta);

    /// <summary>Index of a chance. Source: EN 1990.</summary>
    /// <param name="chance">Chance of failure [-]; 1e-15 to 0.999999.</param>
    /// <exception cref="OutOfRangeException">The chance is out of range.</exception>
    public static ReliabilityIndex OfChance(double chance) =>
        new(-Normal.InvCDF(0, 1, new ValidRange<double>(1e-15, 0.999999).Check(chance, "chance of failure",
            "0.000001 is one in a million.")));

    /// <summary>Index over several periods that fail independently: Φ(βₙ) = Φ(β₁)ⁿ. Source: EN 1990.</summary>
    /// <param name="periods">Number of periods; 1 to 1 000 000.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public ReliabilityIndex Over(int periods) =>
        OfChance(NearZero.AtLeastOnce(Chance, new ValidRange<int>(1, 1_000_000).Check(periods, "number of periods",
            "50 years is usual for a building.")));

    /// <summary>For example "2.82 (1 in 419)".</summary>
    public override string ToString() => Chance > 0 ? $"{Digits.Round(Beta)} (1 in {Digits.Round(1 / Chance, 2)})" : Digits.Round(Beta);
}
