using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Flight.Site;

public class AtmosphereTests
{
    [Theory]
    [InlineData(-5001)]
    [InlineData(30_001)]
    public void Refuses_altitudes_outside_its_range_and_says_which(double metres)
    {
        var error = Assert.Throws<OutOfRangeException>(() => StandardAtmosphere.At(metres.Metres()));
        Assert.Contains("altitude above sea level", error.Message, StringComparison.Ordinal);
        Assert.Contains("30 000 m", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Layers_join_without_a_step()
    {
        foreach (var geopotential in new[] { 11_000.0, 20_000.0 })
        {
            var z = geopotential / (1 - geopotential / 6_356_766.0);
            var below = StandardAtmosphere.At((z - 0.01).Metres());
            var above = StandardAtmosphere.At((z + 0.01).Metres());
            Tolerance.Relative(below.Pressure.Pascals, above.Pressure.Pascals, 1e-5);
            Tolerance.Absolute(below.Temperature.Kelvins, above.Temperature.Kelvins, 1e-3);
        }
    }

    [Fact]
    public void Pressure_is_hydrostatic()
    {
        // dp/dz = −ρ g (r0/(r0 + z))²: geopotential folds the fall of gravity into altitude.
        foreach (var z in new[] { 100.0, 3000, 9000, 15_000, 25_000 })
        {
            var slope = (StandardAtmosphere.At((z + 1).Metres()).Pressure.Pascals - StandardAtmosphere.At((z -
                1).Metres()).Pressure.Pascals) / 2;
            var gravity = 9.80665 * Math.Pow(6_356_766.0 / (6_356_766.0 + z), 2);
            Tolerance.Relative(-StandardAtmosphere.At(z.Metres()).Density.KilogramsPerCubicMeter * gravity, slope, 1e-6);
        }
    }

    [Fact]
    public void The_linear_lapse_takes_altitude_as_geopotential()
    {
        Tolerance.Absolute(216.650, Atmosphere.LinearLapse.At(11_000.Metres()).Temperature.Kelvins, 1e-9);
        Tolerance.Absolute(216.774, Atmosphere.Standard.At(11_000.Metres()).Temperature.Kelvins, 1e-3);
    }

    [Fact]
    public void The_air_of_the_day_starts_from_its_readings()
    {
        var day = Atmosphere.OfTheDay(35.Metres(), 28.Celsius(), 1.002.BarAbsolute());
        Tolerance.Relative(1.002, day.At(35.Metres()).Pressure.Bar, 1e-12);
        Tolerance.Relative(301.15, day.At(35.Metres()).Temperature.Kelvins, 1e-12);
        Assert.True(day.At(600.Metres()).Density < Atmosphere.Standard.At(600.Metres()).Density);
    }

    [Fact]
    public void A_standard_day_read_at_the_ground_is_the_standard_atmosphere()
    {
        var air = StandardAtmosphere.At(500.Metres());
        var day = Atmosphere.OfTheDay(500.Metres(), air.Temperature, air.Pressure);
        Tolerance.Relative(StandardAtmosphere.At(1500.Metres()).Pressure.Pascals, day.At(1500.Metres()).Pressure.Pascals, 1e-9);
    }

    [Fact]
    public void Refuses_readings_that_cannot_be()
    {
        Assert.Throws<OutOfRangeException>(() => Atmosphere.OfTheDay(9000.Metres(), 10.Celsius(), 1.BarAbsolute()));
        Assert.Throws<OutOfRangeException>(() => Atmosphere.OfTheDay(0.Metres(), 90.Celsius(), 1.BarAbsolute()));
        Assert.Throws<OutOfRangeException>(() => Atmosphere.OfTheDay(0.Metres(), 10.Celsius(), 0.BarAbsolute()));
        Assert.Throws<OutOfRangeException>(() => Atmosphere.Standard.At(21_000.Metres()));
    }

    [Fact]
    public void A_site_reads_its_own_air()
    {
        var site = new LaunchSite("high field", 1000.Metres(), Atmosphere.Standard);
        Tolerance.Relative(89_876.3, site.Pressure.Pascals, 1e-6);
        Tolerance.Absolute(281.651, site.Temperature.Kelvins, 1e-3);
        Assert.Single((site with { Elevation = Length.FromKilometers(9) }).Validate());
    }
}
