using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>How many standard deviations below the mean of a few tests one has to go, to be sure that a share of all vessels is
/// stronger.</summary>
/// <remarks>
/// k = t′(n − 1, z√n)/√n with the quantile of the non-central t distribution, taken exactly: the handbook's closed approximations are
/// 10 % unsafe at three tests. Source: MIL-HDBK-17-1F (now CMH-17 Volume 1, ch. 8), §8.5 and Tables 8.5.10, 8.5.11.
/// </remarks>
public static class ToleranceFactor
{
    /// <summary>B-basis factor: nine in ten are stronger, with 95 % confidence [-]. Source: MIL-HDBK-17-1F, Table 8.5.10.</summary>
    /// <param name="tests">Number of tests; 2 to 10 000.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public static double BBasis(int tests) => OneSided(tests, 0.90, 0.95);

    /// <summary>A-basis factor: ninety-nine in a hundred are stronger, with 95 % confidence [-]. Source: MIL-HDBK-17-1F, Table
    /// 8.5.11.</summary>
    /// <param name="tests">Number of tests; 2 to 10 000.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public static double ABasis(int tests) => OneSided(tests, 0.99, 0.95);

    /// <summary>Factor for any share and confidence [-]. Source: MIL-HDBK-17-1F, §8.5.</summary>
    /// <param name="tests">Number of tests; 2 to 10 000.</param>
    /// <param name="share">Share of all vessels that is to be stronger [-]; 0.5 to 0.9999.</param>
    /// <param name="confidence">Confidence [-]; 0.5 to 0.9999.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double OneSided(int tests, double share, double confidence)
    {
        new ValidRange<int>(2, 10_000).Check(tests, "number of tests", "One test has no scatter.");
        new ValidRange<double>(0.5, 0.9999).Check(share, "share", "0.90 for a B-basis, 0.99 for an A-basis.");
        new ValidRange<double>(0.5, 0.9999).Check(confidence, "confidence", "0.95 is usual.");
        var root = Math.Sqrt(tests);
        var shift = Normal.InvCDF(0, 1, share) * root;
        // Enough room: at two tests and 0.9999 the factor is in the thousands.
        return BracketedRoot.Solve(k => NonCentralT(k * root, tests - 1, shift) - confidence, 0, 1e6, 1e-9);
    }

    /// <summary>Probability that a non-central t variable is at most t [-], by quadrature over the spread of the standard
    /// deviation.</summary>
    internal static double NonCentralT(double t, int freedom, double shift)
    {
        double half = freedom / 2.0, logScale = Math.Log(2) + half * Math.Log(half) - SpecialFunctions.GammaLn(half);
        // The ratio of sample to true standard deviation: nearly all of it lies within twelve of its own deviations of 1.
        var width = 12 / Math.Sqrt(2.0 * freedom);
        var low = Math.Max(0, 1 - width);
        var high = 1 + width;
        const int pieces = 8;
        List<double> ends = [.. Enumerable.Range(0, pieces + 1).Select(i => low + (high - low) * i / pieces)];
        // The normal distribution rises within 8/t of shift/t: at two tests and a large factor far narrower than a piece.
        if (t > 0) ends.AddRange(new[] { (shift - 8) / t, shift / t, (shift + 8) / t }.Where(w => w > low && w < high));
        ends.Sort();
        var sum = 0.0;
        for (var i = 0; i + 1 < ends.Count; i++) sum += GaussLegendreRule.Integrate(Density, ends[i], ends[i + 1], 64);
        return sum;

        double Density(double w) =>
            w <= 0 ? 0 : Normal.CDF(0, 1, t * w - shift) * Math.Exp(logScale + (freedom - 1) * Math.Log(w) - half * w * w);
    }
}
