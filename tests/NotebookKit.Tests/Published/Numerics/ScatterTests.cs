using NotebookKit.Numerics;

namespace NotebookKit.Tests.Published.Numerics;

public class ScatterTests
{
    private const string Normal = "Bivariate normal distribution; quadrature and four million samples, worked independently";

    [Theory]
    [PublishedCase("F63", Normal)]
    [InlineData(0.50, 1.177410)]
    [InlineData(0.90, 2.145966)]
    [InlineData(0.95, 2.447747)]
    [InlineData(0.99, 3.034854)]
    public void Circular_radii(double share, double radius)
    {
        var spread = new BivariateSpread(0, 0, 1, 1, 0);
        Tolerance.Absolute(radius, spread.CircleRadius(share), 6e-7);
        Tolerance.Absolute(radius, spread.Ellipse(share).SemiMajor, 6e-7);
        Tolerance.Absolute(share, spread.WithinCircle(radius), 2e-7);
    }

    [Fact]
    [PublishedCase("F63", Normal)]
    public void One_standard_deviation_holds_39_percent() => Tolerance.Absolute(0.3935, new BivariateSpread(0, 0, 4, 4, 0).WithinCircle(2),
        5e-5);

    [Theory]
    [PublishedCase("F63", Normal)]
    [InlineData(2, 1.740835, 3.474160, 5.265134)]
    [InlineData(3, 2.304830, 5.043498, 7.796429)]
    [InlineData(10, 6.819851, 16.479116, 25.777809)]
    public void Circles_about_unequal_axes(double ratio, double half, double ninety, double ninetyNine)
    {
        var spread = new BivariateSpread(0, 0, ratio * ratio, 1, 0);
        Tolerance.Absolute(half, spread.CircleRadius(0.5), 1e-6);
        Tolerance.Absolute(ninety, spread.CircleRadius(0.9), 1e-6);
        Tolerance.Absolute(ninetyNine, spread.CircleRadius(0.99), 1e-6);
    }

    // Standard error of a share p of n samples is sqrt(p (1 - p) / n): 0.0011 here; four of them.
    [Fact]
    [PublishedCase("F63", Normal)]
    public void Sampled_points_fall_inside_as_often_as_said()
    {
        const int Count = 80_000;
        var samples = new SeededSamples(20);
        var (x, y) = (new double[Count], new double[Count]);
        for (var i = 0; i < Count; i++)
        {
            var (u, v) = (samples.Normal(i, 0), samples.Normal(i, 1));
            (x[i], y[i]) = (40 + (30 * u) + (8 * v), -20 + (10 * u) - (12 * v));
        }

        var spread = BivariateSpread.Of(x, y);
        Tolerance.Absolute(40, spread.MeanX, 0.5);
        foreach (var share in new[] { 0.5, 0.9, 0.99 })
        {
            var ellipse = spread.Ellipse(share);
            Tolerance.Absolute(share, Enumerable.Range(0, Count).Count(i => ellipse.Contains(x[i], y[i])) / (double)Count,
                4 * Math.Sqrt(share * (1 - share) / Count));
            var radius = spread.CircleRadius(share);
            Tolerance.Absolute(share, Enumerable.Range(0, Count).Count(i => Math.Sqrt(Math.Pow(x[i] - spread.MeanX, 2)
                + Math.Pow(y[i] - spread.MeanY, 2)) <= radius) / (double)Count, 4 * Math.Sqrt(share * (1 - share) / Count));
        }
    }

    [Theory]
    [PublishedCase("F64", "Chi-square distribution with 2n − 2 degrees of freedom; worked independently")]
    [InlineData(10, 0.7556, 1.4788)]
    [InlineData(20, 0.8172, 1.2888)]
    [InlineData(50, 0.8775, 1.1626)]
    [InlineData(100, 0.9105, 1.1092)]
    [InlineData(500, 0.9580, 1.0459)]
    [InlineData(1000, 0.9699, 1.0320)]
    public void Interval_of_a_deviation(int points, double low, double high)
    {
        var interval = SampleSize.RadialDeviationInterval(points);
        Tolerance.Absolute(low, interval.Low, 6e-5);
        Tolerance.Absolute(high, interval.High, 6e-5);
    }

    [Fact]
    [PublishedCase("F64", "Standard error of a quantile; worked independently")]
    public void Error_of_a_ninety_percent_radius() => Tolerance.Absolute(1.3979, SampleSize.QuantileRadiusError(100, 0.9) * 10, 1e-4);

    [Theory]
    [PublishedCase("F64", "S. S. Wilks, Ann. Math. Stat. 12 (1941) 91-96")]
    [InlineData(0.90, 29)]
    [InlineData(0.95, 59)]
    [InlineData(0.99, 299)]
    [InlineData(0.997, 998)]
    public void Samples_for_the_largest_to_cover(double coverage, int samples)
        => Assert.Equal(samples, SampleSize.ForMaximumToCover(coverage));

    [Theory]
    [PublishedCase("F64", "Rule of three: 95 % bound of about 3/n where none was seen")]
    [InlineData(100)]
    [InlineData(1000)]
    public void None_seen_is_not_none(int samples) => Tolerance.Relative(3.0 / samples, SampleSize.BoundWhereNoneWasSeen(samples), 0.02);
}
