using NotebookKit.Vessels.Allowables;

namespace NotebookKit.Tests.Published.Vessels;

public class CompetingModesTests
{
    private const string Book = "Meeker and Escobar, Statistical Methods for Reliability Data, 1998, ";

    // Kilocycles. S: surge; W: wear-out; eight had not failed at 300.
    private static readonly CompetingModes DeviceG = CompetingModes.Of(
    [
        .. All("W", 147, 181, 212, 245, 266, 275, 293),
        .. All("S", 2, 10, 13, 23, 23, 28, 30, 65, 80, 88, 106, 143, 173, 247, 261),
        .. All(null, [.. Enumerable.Repeat(300.0, 8)]),
    ]);

    // Kilometres.
    private static readonly double[] AbsorberFailures = [6700, 12200, 14300, 17520, 22700, 26510, 27490, 9120, 13150, 20100, 20900];
    private static readonly double[] AbsorberSurvivors =
    [
        6950, 7820, 8790, 9660, 9820, 11310, 11690, 11850, 11880, 12140, 12870, 13330, 13470, 14040, 17540, 17890, 18450, 18960, 18980,
            19410, 20100, 20150, 20320,
        23490, 27410, 27890, 28100,
    ];

    // Printed 6.11 (.427), 1.49 (.35), 5.83 (.11), .23 (.08), −101.36, −47.16; to five digits by an independent script.
    [Theory]
    [PublishedCase("E51", Book + "Table 15.1 (Device-G) and the fits of ch. 15; further digits re-computed")]
    [InlineData("S", 6.1081, 0.4270, 1.4903, 0.3504, 449.47, 0.67099, -101.364)]
    [InlineData("W", 5.8301, 0.1062, 0.23056, 0.0771, 340.38, 4.3373, -47.162)]
    public void Each_mode_is_fitted_with_the_other_censored(string mode, double mu, double muError, double sigma, double sigmaError,
        double scale, double shape, double logLikelihood)
    {
        var fit = DeviceG.Modes[mode];
        Tolerance.Relative(mu, fit.Location, 1e-3);
        Tolerance.Relative(muError, fit.LocationError, 1e-3);
        Tolerance.Relative(sigma, fit.Spread, 1e-3);
        Tolerance.Relative(sigmaError, fit.SpreadError, 1e-3);
        Tolerance.Relative(scale, fit.Fit.Scale, 1e-3);
        Tolerance.Relative(shape, fit.Fit.Shape, 1e-3);
        Tolerance.Absolute(logLikelihood, fit.LogLikelihood, 6e-4);
    }

    [Fact]
    [PublishedCase("E52", Book + "Table 15.1 (Device-G); predictions computed independently of the library")]
    public void Modes_together_predict_reliability_and_which_comes_first()
    {
        Tolerance.Relative(0.69093, DeviceG.Reliability(100), 1e-3);
        Tolerance.Relative(0.50640, DeviceG.Reliability(200), 1e-3);
        Tolerance.Relative(0.26168, DeviceG.Reliability(300), 1e-3);
        Tolerance.Relative(0.50718, DeviceG.FirstToFail("S", 300), 1e-3);
        Tolerance.Relative(0.23115, DeviceG.FirstToFail("W", 300), 1e-3);
        Tolerance.Absolute(1, DeviceG.FirstToFail("S", 300) + DeviceG.FirstToFail("W", 300) + DeviceG.Reliability(300), 1e-5);
        Tolerance.Relative(203.06, DeviceG.Quantile(0.5), 1e-3);
        Tolerance.Relative(15.709, DeviceG.Quantile(0.1), 1e-3);
        Tolerance.Absolute(-148.53, DeviceG.LogLikelihood, 6e-3);
    }

    [Fact]
    [PublishedCase("E52", Book + "Table 15.1 (Device-G); fit without modes computed independently of the library")]
    public void Modes_left_out_give_another_answer()
    {
        var one = CensoredWeibull.Of(
            [147, 181, 212, 245, 266, 275, 293, 2, 10, 13, 23, 23, 28, 30, 65, 80, 88, 106, 143, 173, 247, 261],
                [.. Enumerable.Repeat(300.0, 8)]);
        Tolerance.Relative(5.4914, one.Location, 1e-3);
        Tolerance.Relative(1.0790, one.Spread, 1e-3);
        Tolerance.Relative(0.70405, 1 - one.Reliability(300), 1e-3);
        Tolerance.Absolute(-142.62, one.LogLikelihood, 6e-3);
    }

    [Fact]
    [PublishedCase("E52", "Kaplan and Meier 1958, Aalen and Johansen 1978 on Device-G; computed independently of the library")]
    public void Counts_without_a_distribution()
    {
        Tolerance.Absolute(0.26667, DeviceG.KaplanMeier(300), 6e-6);
        Tolerance.Absolute(0.5, DeviceG.Incidence("S", 300), 6e-5);
        Tolerance.Absolute(0.2333, DeviceG.Incidence("W", 300), 6e-5);
        Assert.Equal(1, DeviceG.KaplanMeier(1.9));
    }

    // A tutorial prints 10.2299 and .3164.
    [Fact]
    [PublishedCase("E53", Book + "Table C.2 (shock absorbers); the fit as a tutorial on Weibull analysis prints it")]
    public void Shock_absorbers_with_their_modes_together()
    {
        var fit = CensoredWeibull.Of(AbsorberFailures, AbsorberSurvivors);
        Assert.Equal(38, fit.Failures + fit.Survivors);
        Tolerance.Absolute(10.2299, fit.Location, 5e-5);
        Tolerance.Absolute(0.3164, fit.Spread, 5e-5);
        Tolerance.Relative(0.1099, fit.LocationError, 1e-3);
        Tolerance.Relative(0.07317, fit.SpreadError, 1e-3);
        Tolerance.Relative(27718.7, fit.Fit.Scale, 1e-3);
        Tolerance.Relative(3.1605, fit.Fit.Shape, 1e-3);
    }

    [Fact]
    [PublishedCase("E53", Book + "ch. 8: a shape needs two failures below the largest value")]
    public void What_cannot_be_fitted_is_refused_in_a_sentence()
    {
        Assert.Contains("there is one", Assert.Throws<ArgumentException>(() => CensoredWeibull.Of([100], [200, 300])).Message,
            StringComparison.Ordinal);
        Assert.Contains("no shape fits", Assert.Throws<ArgumentException>(() => CensoredWeibull.Of([300, 300], [200])).Message,
            StringComparison.Ordinal);
        Assert.Contains("above 0", Assert.Throws<ArgumentException>(() => CensoredWeibull.Of([0, 300], [200])).Message,
            StringComparison.Ordinal);
        Assert.Contains("Nothing has failed", Assert.Throws<ArgumentException>(() => CompetingModes.Of([.. All(null, 1, 2)])).Message,
            StringComparison.Ordinal);
        Assert.Contains("modes are", Assert.Throws<ArgumentException>(() => DeviceG.Incidence("X", 3)).Message, StringComparison.Ordinal);
    }

    private static IEnumerable<ModeObservation> All(string? mode, params double[] values)
        => values.Select(v => new ModeObservation(v, mode));
}
