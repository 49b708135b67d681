using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Allowables;

namespace NotebookKit.Tests.Published.Vessels;

public class AllowablesTests
{
    private const string Handbook = "MIL-HDBK-17-1F (now CMH-17 Volume 1, ch. 8), ";
    private static readonly double[] Ten = [212, 224, 231, 238, 240, 247, 251, 256, 262, 270];

    // Printed to three or four digits; here to the five of a direct quadrature.
    [Theory]
    [PublishedCase("V35", Handbook + "Tables 8.5.10 and 8.5.11")]
    [InlineData(3, 6.1553, 10.5527)]
    [InlineData(4, 4.1619, 7.0424)]
    [InlineData(5, 3.4066, 5.7411)]
    [InlineData(6, 3.0063, 5.0620)]
    [InlineData(8, 2.5819, 4.3539)]
    [InlineData(10, 2.3546, 3.9811)]
    [InlineData(15, 2.0684, 3.5201)]
    [InlineData(20, 1.9260, 3.2952)]
    [InlineData(30, 1.7773, 3.0639)]
    [InlineData(50, 1.6456, 2.8624)]
    [InlineData(100, 1.5267, 2.6840)]
    public void Tolerance_factors(int tests, double b, double a)
    {
        Tolerance.Absolute(b, ToleranceFactor.BBasis(tests), 6e-5);
        Tolerance.Absolute(a, ToleranceFactor.ABasis(tests), 6e-5);
    }

    // SciPy's nct.ppf(confidence, n − 1, z√n)/√n, z = norm.ppf(share): another quadrature than the library's. With a share of a half the
    // factor is Student's t over √n: 2.13185/√5 and 1.83311/√10.
    [Theory]
    [PublishedCase("V35", Handbook + "§8.5: the non-central t distribution at the ends of the range; SciPy's nct.ppf")]
    [InlineData(2, 0.90, 0.95, 20.581468)]
    [InlineData(5, 0.50, 0.95, 0.953391)]
    [InlineData(10, 0.50, 0.95, 0.579681)]
    [InlineData(5, 0.90, 0.50, 1.381819)]
    [InlineData(5, 0.9999, 0.95, 8.965963)]
    [InlineData(5, 0.90, 0.9999, 17.529529)]
    [InlineData(2, 0.9999, 0.9999, 29673.458)]
    [InlineData(10_000, 0.90, 0.95, 1.303949)]
    [InlineData(10_000, 0.99, 0.95, 2.358367)]
    public void Tolerance_factors_at_the_ends_of_their_range(int tests, double share, double confidence, double factor) =>
        Tolerance.Relative(factor, ToleranceFactor.OneSided(tests, share, confidence), 1e-6);

    [Theory]
    [PublishedCase("V35", Handbook + "§8.5: the range of the factor")]
    [InlineData(10_001, 0.90, 0.95)]
    [InlineData(5, 0.49, 0.95)]
    [InlineData(5, 0.99995, 0.95)]
    [InlineData(5, 0.90, 0.49)]
    [InlineData(5, 0.90, 0.99995)]
    public void No_tolerance_factor_is_given_past_the_ends(int tests, double share, double confidence) =>
        Assert.Throws<OutOfRangeException>(() => ToleranceFactor.OneSided(tests, share, confidence));

    [Fact]
    [PublishedCase("V36", Handbook + "§8.5: closed approximation, within 0.1 % from 16 tests, 10 % unsafe at three")]
    public void The_handbook_s_closed_form_is_unsafe_for_few_tests()
    {
        static double Closed(int n) => 1.282 + Math.Exp(0.958 - 0.520 * Math.Log(n) + 3.19 / n);
        Tolerance.Relative(Closed(20), ToleranceFactor.BBasis(20), 1.5e-3);
        Tolerance.Absolute(5.545, Closed(3), 1e-3);
        Assert.True(Closed(3) < 0.91 * ToleranceFactor.BBasis(3));
    }

    [Fact]
    [PublishedCase("V38", Handbook + "§8.5: method; figures re-computed")]
    public void Normal_basis_values_of_ten_bursts()
    {
        var basis = new MeasuredBursts([.. Ten.Select(b => b.BarGauge())]).Normal();
        Tolerance.Absolute(243.1, basis.Mean.Bar, 0.05);
        Tolerance.Absolute(0.07306, basis.Spread, 5e-6);
        Tolerance.Absolute(17.760, basis.Spread * basis.Mean.Bar, 5e-4);
        Tolerance.Absolute(201.3, basis.BBasis.Bar, 0.05);
        Tolerance.Absolute(172.4, basis.ABasis!.Value.Bar, 0.05);
    }

    [Fact]
    [PublishedCase("V39", Handbook + "§8.3.4 and Table 8.5.8: V(10) = 6.711; figures re-computed")]
    public void Weibull_basis_value_of_ten_bursts()
    {
        var fit = WeibullFit.Of(Ten);
        Tolerance.Absolute(250.85, fit.Scale, 6e-3);
        Tolerance.Absolute(16.60, fit.Shape, 6e-3);
        Tolerance.Absolute(6.711, WeibullFactor.BBasis(10), 5e-4);
        Tolerance.Absolute(192.8, new MeasuredBursts([.. Ten.Select(b => b.BarGauge())]).Weibull().BBasis.Bar, 0.06);
    }

    [Theory]
    [PublishedCase("V39", "moments of the Weibull distribution; figures re-computed")]
    [InlineData(10, 12.03)]
    [InlineData(20, 6.198)]
    [InlineData(25, 4.990)]
    public void Scatter_of_a_Weibull_shape(double shape, double percent)
        => Tolerance.Relative(percent, 100 * new WeibullFit(200, shape).Spread, 5e-4);

    // The factor at 7 tests, by the definition: confidence 95 % that q̂·exp(−V/(β̂√n)) lies below the true quantile. 20 000 samples of the
    // pivot leave about ±1 % on V; the table lies between computed counts, so 3 % is taken.
    [Fact]
    [PublishedCase("V39", Handbook + "§8.3.4: definition of V, checked by simulation between the tabulated counts")]
    public void Weibull_factor_between_the_counts_by_simulation()
    {
        const int n = 7, trials = 20_000;
        var samples = new SeededSamples(17);
        var pivots = new double[trials];
        Parallel.For(0, trials, i =>
        {
            var values = new double[n];
            for (var j = 0; j < n; j++) values[j] = -Math.Log(samples.Uniform(i, j));
            var fit = WeibullFit.Of(values);
            // Unit exponential: true tenth quantile 0.10536.
            pivots[i] = fit.Shape * Math.Sqrt(n) * Math.Log(fit.Quantile(0.10) / -Math.Log(0.9));
        });
        Array.Sort(pivots);
        Tolerance.Relative(pivots[(int)(0.95 * trials)], WeibullFactor.BBasis(n), 0.03);
    }

    [Theory]
    [PublishedCase("V40", Handbook + "§8.5: method; figures re-computed")]
    [InlineData(3, 0.508)]
    [InlineData(5, 0.727)]
    [InlineData(10, 0.812)]
    public void Few_tests_cost_dear(int tests, double share) => Tolerance.Absolute(share, 1 - 0.08 * ToleranceFactor.BBasis(tests), 6e-4);

    [Theory]
    [PublishedCase("V41", "success-run theorem, as reliability tutorials print it")]
    [InlineData(0.90, 0.90, 22)]
    [InlineData(0.90, 0.95, 29)]
    [InlineData(0.95, 0.95, 59)]
    [InlineData(0.99, 0.90, 230)]
    [InlineData(0.99, 0.95, 299)]
    [InlineData(0.999, 0.95, 2995)]
    public void Tests_without_a_failure(double reliability, double confidence, int tests)
        => Assert.Equal(tests, ZeroFailureTests.Needed(reliability, confidence));

    [Fact]
    [PublishedCase("V42", "success-run theorem, classical and with a uniform prior; figures re-computed")]
    public void One_pass_shows_little()
    {
        Tolerance.Absolute(0.05, ZeroFailureTests.Shown(1, 0.95), 1e-12);
        Tolerance.Absolute(0.10, ZeroFailureTests.Shown(1, 0.90), 1e-12);
        Tolerance.Absolute(0.50, ZeroFailureTests.Shown(1, 0.50), 1e-12);
        Tolerance.Absolute(0.2236, ZeroFailureTests.ShownByBayes(1, 0.95), 5e-5);
        Tolerance.Absolute(2.0 / 3, ZeroFailureTests.ExpectedByBayes(1), 1e-12);
        Tolerance.Absolute(0.19, ZeroFailureTests.ProbabilityAbove(1, 0.9), 1e-12);
        foreach (var (n, shown, mean) in new[] { (3, 0.368, 0.80), (5, 0.549, 0.857), (10, 0.741, 0.917) })
        {
            Tolerance.Absolute(shown, ZeroFailureTests.Shown(n, 0.95), 6e-4);
            Tolerance.Absolute(mean, ZeroFailureTests.ExpectedByBayes(n), 6e-4);
        }
    }

    [Theory]
    [PublishedCase("V43", "Abernethy, The New Weibull Handbook: Weibayes; figures re-computed")]
    [InlineData(1, 0.90, 1.5, 10, 0.9609, 5e-5)]
    [InlineData(1, 0.90, 1.5, 20, 0.99931, 5e-6)]
    [InlineData(1, 0.90, 1.25, 10, 0.7810, 5e-5)]
    [InlineData(3, 0.95, 1.5, 10, 0.9828, 5e-5)]
    public void Overload_shows_more_where_the_shape_is_known(int passes, double confidence, double overload, double shape,
        double reliability, double tolerance) =>
        Tolerance.Absolute(reliability, ZeroFailureTests.ShownByOverload(passes, confidence, overload, shape), tolerance);

    [Fact]
    [PublishedCase("M30", "Bader and Priest 1982, carbon filaments of 20 mm, n = 69: Weibull 5.50 and 2.651, mean 2.451, SD 0.495 (as "
        + "statistics packages list the data)")]
    public void Weibull_fit_of_sixty_nine_filaments()
    {
        double[] strengths =
        [
            1.312, 1.314, 1.479, 1.552, 1.700, 1.803, 1.861, 1.865, 1.944, 1.958, 1.966, 1.997, 2.006, 2.021, 2.027, 2.055, 2.063, 2.098,
            2.140, 2.179, 2.224, 2.240, 2.253, 2.270, 2.272, 2.274, 2.301, 2.301, 2.359, 2.382, 2.382, 2.426, 2.434, 2.435, 2.478, 2.490,
            2.511, 2.514, 2.535, 2.554, 2.566, 2.570, 2.586, 2.629, 2.633, 2.642, 2.648, 2.684, 2.697, 2.726, 2.770, 2.773, 2.800, 2.809,
            2.818, 2.821, 2.848, 2.880, 2.954, 3.012, 3.067, 3.084, 3.090, 3.096, 3.128, 3.233, 3.433, 3.585, 3.585,
        ];
        Assert.Equal(69, strengths.Length);
        Tolerance.Relative(2.451, strengths.Average(), 1e-3);
        var fit = WeibullFit.Of(strengths);
        Tolerance.Relative(5.50, fit.Shape, 0.01);
        Tolerance.Relative(2.651, fit.Scale, 2e-3);
    }

    [Fact]
    [PublishedCase("V35", Handbook + "Table 8.5.10 starts at two tests")]
    public void One_burst_has_no_basis_value()
    {
        var error = Assert.Throws<InvalidDesignException>(() => new MeasuredBursts([120.BarGauge()]).Normal());
        Assert.Contains("need at least two", error.Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => ToleranceFactor.BBasis(1));
        Assert.Throws<OutOfRangeException>(() => WeibullFactor.BBasis(4));
        Assert.Throws<ArgumentException>(() => WeibullFit.Of([2.0, -1.0, 3.0]));
        Assert.Throws<ArgumentException>(() => WeibullFit.Of([2.0, 2.0, 2.0]));
    }
}
