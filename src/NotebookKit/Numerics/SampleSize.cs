using MathNet.Numerics.Distributions;

namespace NotebookKit.Numerics;

/// <summary>What a number of samples can and can't say.</summary>
/// <remarks>
/// Source: chi-square distribution of a variance; S. S. Wilks, Determination of sample sizes for setting tolerance limits, Ann. Math. Stat.
/// 12 (1941) 91-96, one-sided, largest of n.
/// </remarks>
public static class SampleSize
{
    /// <summary>
    /// Confidence interval of a radial standard deviation estimated from n points in a plane, as factors on the estimate: chi-square with
    /// 2n − 2 degrees of freedom.
    /// </summary>
    /// <param name="points">Number of points; 2 or more.</param>
    /// <param name="confidence">Confidence [-]; above 0, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside.</exception>
    public static (double Low, double High) RadialDeviationInterval(int points, double confidence = 0.95)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        Check(confidence, nameof(confidence));
        var freedom = (2.0 * points) - 2;
        var (lower, upper) = (ChiSquared.InvCDF(freedom, (1 - confidence) / 2), ChiSquared.InvCDF(freedom, (1 + confidence) / 2));
        return (Math.Sqrt(freedom / upper), Math.Sqrt(freedom / lower));
    }

    /// <summary>Standard error of a radius read off the sorted distances of n points from a circular spread, over its σ [-].</summary>
    /// <param name="points">Number of points; 2 or more.</param>
    /// <param name="share">Share of the points inside the radius [-]; above 0, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside.</exception>
    public static double QuantileRadiusError(int points, double share)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        Check(share, nameof(share));
        // Standard error of a quantile: √(P(1 − P)/n) over the density there, which is r (1 − P) for a Rayleigh radius.
        var radius = Math.Sqrt(-2 * MathNet.Numerics.SpecialFunctions.Log1p(-share));
        return Math.Sqrt(share * (1 - share) / points) / (radius * (1 - share));
    }

    /// <summary>Fewest samples whose largest exceeds a share of the population with a confidence (Wilks).</summary>
    /// <param name="coverage">Share of the population [-]; above 0, below 1.</param>
    /// <param name="confidence">Confidence [-]; above 0, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside.</exception>
    public static int ForMaximumToCover(double coverage, double confidence = 0.95)
    {
        Check(coverage, nameof(coverage));
        Check(confidence, nameof(confidence));
        var samples = Math.Ceiling(Math.Log(1 - confidence) / Math.Log(coverage));
        return samples <= int.MaxValue ? (int)Math.Max(samples, 1) : throw new ArgumentOutOfRangeException(nameof(coverage),
            $"coverage is {coverage:R}; so near to 1 it takes more than {int.MaxValue} samples. Ask for less coverage or confidence.");
    }

    /// <summary>Upper bound of a probability of which n samples showed no case [-]; about 3 / n at 95 %.</summary>
    /// <param name="samples">Number of samples; 1 or more.</param>
    /// <param name="confidence">Confidence [-]; above 0, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside.</exception>
    public static double BoundWhereNoneWasSeen(int samples, double confidence = 0.95)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(samples, 1);
        return 1 - Math.Pow(1 - Check(confidence, nameof(confidence)), 1.0 / samples);
    }

    private static double Check(double share, string name) => share is > 0 and < 1
        ? share
        : throw new ArgumentOutOfRangeException(name, $"{name} is {share}; it must be above 0 and below 1.");
}
