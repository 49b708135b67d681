namespace NotebookKit.Numerics;

/// <summary>Mean and covariance of points in a plane, read as a bivariate normal distribution.</summary>
/// <remarks>
/// An ellipse of one standard deviation holds 39.35 % of the points, not 68 %. Source: the bivariate normal distribution;
/// its radius for equal axes is σ √(−2 ln(1 − P)) (Rayleigh), for unequal ones the inverse of an integral over direction.
/// </remarks>
/// <param name="MeanX">Mean along x [unit of the points]; any finite value.</param>
/// <param name="MeanY">Mean along y [unit of the points]; any finite value.</param>
/// <param name="VarianceX">Variance along x [square of the unit]; 0 or above.</param>
/// <param name="VarianceY">Variance along y [square of the unit]; 0 or above.</param>
/// <param name="Covariance">Covariance [square of the unit]; any finite value.</param>
public readonly record struct BivariateSpread(double MeanX, double MeanY, double VarianceX, double VarianceY, double Covariance)
{
    private const int Directions = 720;

    /// <summary>Standard deviation along the longer axis [unit of the points].</summary>
    public double Major => Math.Sqrt(Math.Max(0, Middle + Difference));

    /// <summary>Standard deviation along the shorter axis [unit of the points].</summary>
    public double Minor => Math.Sqrt(Math.Max(0, Middle - Difference));

    private double Middle => (VarianceX + VarianceY) / 2;

    private double Difference => Math.Sqrt((Math.Pow(VarianceX - VarianceY, 2) / 4) + (Covariance * Covariance));

    /// <summary>Estimates it from points, with n − 1 in the denominator.</summary>
    /// <param name="x">Points along x.</param>
    /// <param name="y">Points along y, as many.</param>
    /// <exception cref="ArgumentException">There are fewer than two points, or the lengths differ.</exception>
    public static BivariateSpread Of(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length != y.Length || x.Length < 2)
            throw new ArgumentException($"there are {x.Length} x and {y.Length} y values; there must be as many of both, at least 2.",
                nameof(x));
        double meanX = 0, meanY = 0;
        for (var i = 0; i < x.Length; i++)
        {
            meanX += x[i];
            meanY += y[i];
        }

        (meanX, meanY) = (meanX / x.Length, meanY / x.Length);
        double xx = 0, yy = 0, xy = 0;
        for (var i = 0; i < x.Length; i++)
        {
            var (dx, dy) = (x[i] - meanX, y[i] - meanY);
            xx += dx * dx;
            yy += dy * dy;
            xy += dx * dy;
        }

        var n = x.Length - 1.0;
        return new BivariateSpread(meanX, meanY, xx / n, yy / n, xy / n);
    }

    /// <summary>The ellipse of constant density that holds a share of the points.</summary>
    /// <param name="probability">Share of the points [-]; above 0, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside.</exception>
    public SpreadEllipse Ellipse(double probability)
    {
        var factor = Math.Sqrt(-2 * Math.Log(1 - CheckShare(probability)));
        return new SpreadEllipse(MeanX, MeanY, factor * Major, factor * Minor, Math.Atan2(2 * Covariance, VarianceX - VarianceY) / 2);
    }

    /// <summary>Share of the points within a circle about the mean [-].</summary>
    /// <param name="radius">Radius [unit of the points]; 0 or above.</param>
    public double WithinCircle(double radius)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(radius);
        WorkRun.Current.ThrowIfStopped();
        var (a, b) = (1 / (Major * Major), 1 / (Minor * Minor));
        if (!double.IsFinite(a)) return 1;
        if (!double.IsFinite(b)) return MathNet.Numerics.SpecialFunctions.Erf(radius / Major / Math.Sqrt(2));
        // The integrand is smooth and periodic: the trapezoidal rule converges faster than any power. Narrow ellipses need more directions.
        var count = (int)Math.Clamp(Directions * Math.Ceiling(Major / Minor / 10), Directions, 100_000);
        var sum = 0.0;
        for (var i = 0; i < count; i++)
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * i / count);
            var g = (a * cosine * cosine) + (b * sine * sine);
            sum -= Math.Exp(-radius * radius * g / 2) / g;
        }

        return 1 + (sum / count * Math.Sqrt(a * b));
    }

    /// <summary>Radius of the circle about the mean that holds a share of the points [unit of the points].</summary>
    /// <param name="probability">Share of the points [-]; above 0, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside.</exception>
    public double CircleRadius(double probability)
    {
        CheckShare(probability);
        if (Major == 0) return 0;
        var (low, high) = (0.0, Major);
        while (WithinCircle(high) < probability) (low, high) = (high, 2 * high);
        var spread = this;
        return BracketedRoot.Solve(r => spread.WithinCircle(r) - probability, low, high, 1e-13 * high);
    }

    private static double CheckShare(double probability) => probability is > 0 and < 1
        ? probability
        : throw new ArgumentOutOfRangeException(nameof(probability), $"probability is {probability}; it must be above 0 and below 1.");
}
