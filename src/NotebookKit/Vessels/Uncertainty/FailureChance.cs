using System.Globalization;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>How many of the sampled vessels burst at or below a pressure.</summary>
/// <param name="Pressure">The pressure.</param>
/// <param name="Failed">Samples that burst at or below it.</param>
/// <param name="Samples">All samples.</param>
/// <param name="AtMost">Probability that is not exceeded with 95 % confidence, given the number of samples [-].</param>
/// <remarks>Source: Clopper and Pearson, Biometrika 26, 1934 (upper limit).</remarks>
public sealed record FailureChance(GaugePressure Pressure, int Failed, int Samples, double AtMost)
{
    /// <summary>Best estimate [-]. Source: share of the samples.</summary>
    public double Estimate => (double)Failed / Samples;

    /// <summary>For example "1 in 83", or "fewer than 1 in 6 700" where no sample failed.</summary>
    public override string ToString() => Failed == 0
        ? string.Create(CultureInfo.InvariantCulture, $"fewer than 1 in {Digits.Round(1 / AtMost, 2)}")
        : Estimate > 0.5 ? $"{Digits.Round(100 * Estimate)} %"
            : string.Create(CultureInfo.InvariantCulture, $"1 in {Digits.Round(1 / Estimate, 2)}");
}
