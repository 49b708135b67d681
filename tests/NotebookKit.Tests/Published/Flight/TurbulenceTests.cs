using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Flight;

public class TurbulenceTests
{
    private const string Military = "MIL-F-8785C, 1980, 3.7.3, low altitude; worked independently";

    private static DrydenTurbulence Light { get; } = new(15.Knots());

    [Theory]
    [PublishedCase("F61", Military)]
    [InlineData(20, 1.4887, 43.766)]
    [InlineData(100, 1.3241, 153.976)]
    [InlineData(200, 1.1858, 221.220)]
    [InlineData(1000, 0.7717, 304.800)]
    public void Strength_and_scale(double feet, double deviation, double scale)
    {
        Tolerance.Absolute(deviation, Light.Horizontal(feet.Feet()).MetersPerSecond, 6e-5);
        Tolerance.Relative(scale, DrydenTurbulence.Scale(feet.Feet()).Meters, 5e-6);
        Tolerance.Relative(2 * deviation, new DrydenTurbulence(30.Knots()).Horizontal(feet.Feet()).MetersPerSecond, 5e-5);
    }

    [Fact]
    [PublishedCase("F61", Military)]
    public void Vertical_strength() => Tolerance.Absolute(0.7717, Light.Vertical.MetersPerSecond, 5e-5);

    // Both spectra integrate over all positive frequencies to the variance. By the substitution x = tan, on a fine grid.
    [Fact]
    [PublishedCase("F61", Military)]
    public void Spectra_integrate_to_the_variance()
    {
        var (deviation, scale, speed) = (1.3.MetresPerSecond(), 150.Metres(), 40.MetresPerSecond());
        const int Steps = 20_000;
        double along = 0, across = 0;
        for (var i = 0; i < Steps; i++)
        {
            var angle = Math.PI / 2 * (i + 0.5) / Steps;
            var frequency = Math.Tan(angle) * 40 / 150;
            var width = Math.PI / 2 / Steps * 40 / 150 / Math.Pow(Math.Cos(angle), 2);
            along += DrydenTurbulence.LongitudinalSpectrum(deviation, scale, speed, frequency) * width;
            across += DrydenTurbulence.LateralSpectrum(deviation, scale, speed, frequency) * width;
        }

        Tolerance.Relative(1.69, along, 1e-6);
        Tolerance.Relative(1.69, across, 1e-6);
    }

    // Above 1000 ft strength and scale are held, so the field is stationary there: its variance and its correlation over a distance must be
    // those of the across spectrum, r(x) = (1 − x/2L) e^(−x/L). 60 fields of two components over 3600 m, scale 304.8 m: about 700
    // independent lengths, so a variance within some 5 %.
    [Fact]
    [PublishedCase("F61", "Across-flow correlation of the Dryden spectrum, r(x) = (1 − x / 2L) exp(−x / L)")]
    public void The_gust_field_has_the_strength_and_the_correlation_of_its_spectrum()
    {
        double square = 0, product = 0;
        long count = 0;
        const int Lag = 100;
        for (var seed = 1UL; seed <= 60; seed++)
        {
            var field = Light.Field(4000.Metres(), seed).AsSeries();
            foreach (var gust in new[] { field.East, field.North })
            {
                for (var i = 400; i + Lag < gust.Count; i++)
                {
                    square += gust[i] * gust[i];
                    product += gust[i] * gust[i + Lag];
                    count++;
                }
            }
        }

        Tolerance.Relative(0.7717 * 0.7717, square / count, 0.06);
        Tolerance.Absolute((1 - (100 / 609.6)) * Math.Exp(-100 / 304.8), product / square, 0.04);
    }

    [Fact]
    [PublishedCase("F61", "Reproducibility of the seeded field, Salmon et al., SC11, 2011")]
    public void The_same_seed_gives_the_same_field()
    {
        Assert.Equal(Light.Field(300.Metres(), 7).AsSeries().East.Values, Light.Field(300.Metres(), 7).AsSeries().East.Values);
        Assert.NotEqual(Light.Field(300.Metres(), 7).AsSeries().East.Values, Light.Field(300.Metres(), 8).AsSeries().East.Values);
    }
}
