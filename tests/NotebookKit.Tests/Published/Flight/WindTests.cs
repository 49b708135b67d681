using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Flight;

public class WindTests
{
    private const string Laws = "Power and logarithmic wind laws (J. Counihan, 1975); worked independently";

    [Theory]
    [PublishedCase("F60", Laws)]
    [InlineData(2, 3.972987, 3.614737, 3.252575)]
    [InlineData(50, 6.292495, 6.385263, 6.747425)]
    [InlineData(100, 6.947477, 6.981863, 7.500000)]
    [InlineData(300, 8.128065, 7.927452, 8.692803)]
    public void Profiles(double height, double power, double grass, double crops)
    {
        var (speed, reference, at) = (5.MetresPerSecond(), 10.Metres(), height.Metres());
        // 8.128065 is printed for 300 m; its own mean over the height, 7.112059 times 8/7, gives 8.128067.
        Tolerance.Relative(power, WindProfile.PowerLaw(speed, reference).At(at).MetersPerSecond, 5e-7);
        Tolerance.Relative(grass, WindProfile.LogLaw(speed, reference, 0.03.Metres()).At(at).MetersPerSecond, 2e-7);
        Tolerance.Relative(crops, WindProfile.LogLaw(speed, reference, 0.1.Metres()).At(at).MetersPerSecond, 2e-7);
    }

    [Fact]
    [PublishedCase("F62", Laws)]
    public void Drift_from_300_metres()
    {
        var (from, descent, speed, reference) = (300.Metres(), 6.385242.MetresPerSecond(), 5.MetresPerSecond(), 10.Metres());
        Tolerance.Relative(234.9167, Drift.Descending(from, descent, WindProfile.Uniform(speed)).Distance.Meters, 3e-7);
        var power = Drift.Descending(from, descent, WindProfile.PowerLaw(speed, reference));
        Tolerance.Relative(334.1483, power.Distance.Meters, 3e-7);
        Tolerance.Relative(7.112059, power.MeanWind.MetersPerSecond, 1e-7);
        Tolerance.Relative(332.0231, Drift.Descending(from, descent, WindProfile.LogLaw(speed, reference, 0.03.Metres())).Distance.Meters,
            3e-7);
    }

    // The power law that touches the log law at the reference height has alpha = 1 / ln(z_ref / z0): equal slopes there.
    [Fact]
    [PublishedCase("N72", "Identity of the power and logarithmic laws at the reference height, S. A. Hsu et al., 1994")]
    public void Power_and_log_laws_touch_at_the_reference_height()
    {
        var (speed, reference, roughness) = (5.MetresPerSecond(), 10.Metres(), 0.03.Metres());
        var power = WindProfile.PowerLaw(speed, reference, 1 / Math.Log(10 / 0.03));
        var log = WindProfile.LogLaw(speed, reference, roughness);
        Tolerance.Relative(log.At(10.1.Metres()).MetersPerSecond, power.At(10.1.Metres()).MetersPerSecond, 1e-5);
        Tolerance.Relative(log.At(9.9.Metres()).MetersPerSecond, power.At(9.9.Metres()).MetersPerSecond, 1e-5);
    }

    // Seven months of lidar over a city: the exponent tends to 0.25 in wind above 6 m/s at 67.5 m, within 0.03. Over the sea 0.11, sd 0.03.
    [Fact]
    [PublishedCase("N70", "H. Kikumoto et al., wind profile over Tokyo by Doppler lidar, 2017")]
    [PublishedCase("N72", "S. A. Hsu et al., power-law wind profile exponent over the sea, 1994")]
    public void Exponents_as_measured()
    {
        double Exponent(WindProfile wind) => Math.Log(wind.At(100.Metres()) / wind.At(50.Metres())) / Math.Log(2);
        Tolerance.Absolute(0.25, Exponent(WindProfile.OverCity(8.MetresPerSecond(), 67.5.Metres())), 0.03);
        Tolerance.Absolute(0.11, Exponent(WindProfile.OverSea(8.MetresPerSecond(), 10.Metres())), 0.03);
    }

    // Lidar in a typhoon, 0 to 300 m: both laws fit the measured profiles within 0.5 m/s, so they have to fit each other as well; and the
    // exponent grows with the roughness of the ground.
    [Theory]
    [PublishedCase("N71", "Typhoon wind profiles by lidar over sea and land, 0 to 300 m: power and logarithmic law both fit, r > 0.98, "
        + "rms < 0.5 m/s")]
    [InlineData(0.03)]
    [InlineData(0.1)]
    [InlineData(0.5)]
    public void Power_and_log_laws_fit_each_other_up_to_300_metres(double roughness)
    {
        var (speed, reference) = (8.MetresPerSecond(), 50.Metres());
        var log = WindProfile.LogLaw(speed, reference, roughness.Metres());
        var power = WindProfile.PowerLaw(speed, reference, 1 / Math.Log(50 / roughness));
        var heights = Enumerable.Range(1, 30).Select(i => (10.0 * i).Metres()).ToArray();
        var rms = Math.Sqrt(heights.Average(h => Math.Pow(log.At(h).MetersPerSecond - power.At(h).MetersPerSecond, 2)));
        Assert.InRange(rms, 0.001, 0.5);
        double Exponent(double z0) => Math.Log(WindProfile.LogLaw(speed, reference, z0.Metres()).At(300.Metres()) / speed) / Math.Log(6);
        Assert.True(Exponent(2 * roughness) > Exponent(roughness));
    }
}
