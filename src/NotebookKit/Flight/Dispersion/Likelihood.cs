using NotebookKit.Provenance;
using NotebookKit.Quantities;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// How often something happened among the flights, and between which probabilities that leaves it, at 95 %.
/// Source: C. J. Clopper and E. S. Pearson, Biometrika 26, 1934 (unverified).
/// </summary>
/// <param name="Cases">How often it happened.</param>
/// <param name="Flights">Of how many.</param>
/// <param name="Share">Share of the flights.</param>
/// <param name="Low">Lowest probability that this is compatible with.</param>
/// <param name="High">Highest probability that this is compatible with; about 3 over the flights where it never happened.</param>
public sealed record Likelihood(int Cases, int Flights, Ratio Share, Ratio Low, Ratio High)
{
    /// <summary>From a count. Source: Clopper and Pearson, 1934; one-sided where it happened never or always.</summary>
    /// <param name="cases">How often it happened; 0 to the number of flights.</param>
    /// <param name="flights">Number of flights; 1 to 10 million.</param>
    /// <exception cref="OutOfRangeException">A number is outside.</exception>
    public static Likelihood Of(int cases, int flights)
    {
        new ValidRange<int>(1, 10_000_000).Check(flights, "number of flights", "Fly at least one.");
        new ValidRange<int>(0, flights).Check(cases, "number of cases", "It can't be more than the flights.");
        var low = cases == 0 ? 0 : Beta.InvCDF(cases, flights - cases + 1, cases == flights ? 0.05 : 0.025);
        var high = cases == flights ? 1 : Beta.InvCDF(cases + 1, flights - cases, cases == 0 ? 0.95 : 0.975);
        return new(cases, flights, (100.0 * cases / flights).Percent(), (100 * low).Percent(), (100 * high).Percent());
    }

    /// <summary>For example "2.1 % (1.3 to 3.2 %)".</summary>
    public override string ToString() => Cases == 0
        ? $"none of {Flights}: below {Digits.Round(High.Percent, 2)} %"
        : $"{Digits.Round(Share.Percent, 2)} % ({Digits.Round(Low.Percent, 2)} to {Digits.Round(High.Percent, 2)} %)";
}
