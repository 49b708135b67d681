using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Life.Weather;

public class ResinAndWallTests
{
    private static readonly MoistureUptake Wall = new(2.Millimetres(), KinematicViscosity.FromSquareMetersPerSecond(1e-13),
        WetFaces.OuterOnly);

    private static readonly SunHeating Sun = new(
        35.Celsius(), Irradiance.FromWattsPerSquareMeter(950), 0.9, 0.9, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10));

    [Fact]
    public void Warmer_or_wetter_resin_never_keeps_more() =>
        Gen.Select(Gen.Double[60, 180], Gen.Double[0, 9], Gen.Double[-20, 30], Gen.Double[0.1, 5],
            Gen.Double[0.1, 0.9]).Sample((dry, wet, service, warmer, wetter) =>
        {
            var resin = new HygrothermalRetention(dry.Celsius(), wet.Percent(), service.Celsius());
            if (resin.WetGlass.DegreesCelsius < service + warmer + 2) return;
            var kept = resin.Evaluate().Retention;
            Assert.InRange(kept, 0, 1);
            Assert.True((resin with { Service = (service + warmer).Celsius() }).Evaluate().Retention <= kept);
            var more = resin with { Moisture = (wet + wetter).Percent() };
            if (more.WetGlass.DegreesCelsius > service + 1) Assert.True(more.Evaluate().Retention <= kept);
        });

    [Fact]
    public void The_unit_of_a_temperature_does_not_matter()
    {
        var celsius = new HygrothermalRetention(80.Celsius(), 1.Percent(), 40.Celsius()).Evaluate();
        var fahrenheit = new HygrothermalRetention(Temperature.FromDegreesFahrenheit(176), Ratio.FromDecimalFractions(0.01),
            Temperature.FromDegreesFahrenheit(104))
        {
            Reference = 293.15.Kelvins(),
        }.Evaluate();
        Tolerance.Relative(celsius.Retention, fahrenheit.Retention, 1e-12);
        Assert.Equal(celsius.Lines[0].Value, fahrenheit.Lines[0].Value);
    }

    [Theory]
    [InlineData(62.4)]
    [InlineData(90)]
    public void At_or_above_the_wet_glass_temperature_the_resin_is_refused_in_a_sentence(double celsius)
    {
        var refusal = Assert.Throws<InvalidDesignException>(() => new HygrothermalRetention(80.Celsius(), 2.Percent(),
            celsius.Celsius()).Evaluate());
        Assert.Contains("service temperature is", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("62.4 °C", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("Cool and dry the vessel", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Warns_close_to_the_wet_glass_temperature_and_only_there()
    {
        Assert.Contains(new HygrothermalRetention(80.Celsius(), 2.Percent(), 50.Celsius()).Evaluate().Findings,
            f => f.Severity == FindingSeverity.Warning);
        Assert.DoesNotContain(new HygrothermalRetention(80.Celsius(), 2.Percent(), 30.Celsius()).Evaluate().Findings,
            f => f.Severity == FindingSeverity.Warning);
    }

    [Fact]
    public void Cold_resin_is_never_said_to_be_stronger_than_measured() =>
        Assert.Equal(1, new HygrothermalRetention(80.Celsius(), 0.Percent(), 0.Celsius()).Evaluate().Retention);

    [Fact]
    public void A_reduced_resin_says_so_and_loses_strength_and_stiffness_alike()
    {
        var dry = MaterialLibrary.Typical.Resin("laminating epoxy");
        var result = new HygrothermalRetention(80.Celsius(), 2.Percent(), 40.Celsius()).Evaluate();
        var wet = result.Reduce(dry);
        Tolerance.Relative(result.Retention, wet.Modulus.Value / dry.Modulus.Value, 1e-12);
        Tolerance.Relative(result.Retention, wet.ShearStrength.Value / dry.ShearStrength.Value, 1e-12);
        Assert.Contains("wet at 40 °C", wet.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Uptake_grows_with_time_and_both_exact_series_meet()
    {
        Gen.Select(Gen.Double[0.01, 4000], Gen.Double[1.001, 2]).Sample((days, factor) =>
        {
            var share = Wall.ShareAfter(Duration.FromDays(days)).DecimalFractions;
            Assert.InRange(share, 0, 1);
            Assert.True(Wall.ShareAfter(Duration.FromDays(days * factor)).DecimalFractions >= share);
        });
        Tolerance.Relative(MoistureUptake.Exact(0.06), MoistureUptake.Exact(Math.BitDecrement(0.06)), 1e-13);
        Assert.Equal(0, Wall.ShareAfter(Duration.Zero).Percent);
    }

    [Fact]
    public void Time_to_a_share_and_share_after_a_time_undo_each_other() =>
        Gen.Double[0.2, 99.9].Sample(percent => Tolerance.Relative(percent, Wall.ShareAfter(Wall.TimeTo(percent.Percent())).Percent, 1e-9));

    [Fact]
    public void The_unit_of_a_thickness_does_not_matter() =>
        Tolerance.Relative(Wall.TimeTo(50.Percent()).Days, (Wall with { Thickness = (2 / 25.4).Inches() }).TimeTo(50.Percent()).Days, 1e-9);

    [Fact]
    public void A_moist_wall_feeds_the_resin_that_it_weakens()
    {
        var wet = Wall.After(Duration.FromDays(365), 3.Percent());
        Tolerance.Relative(3 * wet.Share.DecimalFractions, wet.Moisture.Percent, 1e-12);
        Assert.True(new HygrothermalRetention(80.Celsius(), wet.Moisture, 30.Celsius()).Evaluate().Retention < 1);
        Assert.Equal(3, wet.Lines.Count);
    }

    [Fact]
    public void Bad_walls_and_weighings_are_refused_in_a_sentence()
    {
        Assert.Contains("wall thickness is 0.01 mm", Assert.Throws<InvalidDesignException>(() => (Wall
            with { Thickness = 0.01.Millimetres() }).TimeTo(50.Percent())).Message, StringComparison.Ordinal);
        Assert.Contains("100 %", Assert.Throws<OutOfRangeException>(() => Wall.TimeTo(100.Percent())).Message, StringComparison.Ordinal);
        Assert.Contains("later and heavier", Assert.Throws<InvalidDesignException>(() =>
            MoistureUptake.DiffusivityFrom(2.Millimetres(), 1.5.Percent(), 0.5.Percent(), 24.Hours(), 0.2.Percent(), 48.Hours())).Message,
                StringComparison.Ordinal);
        Assert.Contains("earlier weighing", Assert.Throws<InvalidDesignException>(() =>
            MoistureUptake.DiffusivityFrom(2.Millimetres(), 1.5.Percent(), 0.5.Percent(), 24.Hours(), 1.4.Percent(), 480.Hours())).Message,
                StringComparison.Ordinal);
    }

    [Fact]
    public void More_sun_a_blacker_wall_or_stiller_air_is_never_cooler() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 0.9], Gen.Double[0, 0.9], Gen.Double[2, 100]).Sample((sun, black, emittance, film) =>
        {
            var wall = new SunHeating(30.Celsius(), Irradiance.FromWattsPerSquareMeter(sun), black, emittance,
                HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(film));
            var surface = wall.Surface().Kelvins;
            Assert.True(surface >= 303.15 - 1e-9);
            Assert.True((wall with { Sun = Irradiance.FromWattsPerSquareMeter(sun + 100) }).Surface().Kelvins >= surface - 1e-9);
            Assert.True((wall with { Absorptance = black + 0.1 }).Surface().Kelvins >= surface - 1e-9);
            Assert.True((wall with { Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(film / 1.5) }).Surface().Kelvins >=
                surface - 1e-9);
        });

    // By hand: a gauge pressure must not simply be scaled, 80 × 333.15/293.15 = 90.916; water in the vessel makes the pressure rise more.
    [Fact]
    public void Pressure_is_reckoned_above_vacuum_and_water_makes_it_rise_more()
    {
        var dry = new ClosedVessel(80.BarGauge(), 20.Celsius());
        Assert.True(dry.PressureAt(60.Celsius()).Bar > 80 * 333.15 / 293.15 + 0.1);
        Assert.True((dry with { WaterFraction = 33.Percent() }).PressureAt(60.Celsius()) > dry.PressureAt(60.Celsius()));
        Tolerance.Relative(80, (dry with { WaterFraction = 33.Percent() }).PressureAt(20.Celsius()).Bar, 1e-12);
        Tolerance.Relative(dry.PressureAt(60.Celsius()).Bar,
            new ClosedVessel((80 * 14.503773773).PsiGauge(), 68.0.Fahrenheit()).PressureAt(140.0.Fahrenheit()).Bar, 1e-9);
    }

    [Fact]
    public void A_black_vessel_in_the_sun_warns_and_no_pressure_is_given_beyond_water_s_table()
    {
        var dry = Sun.Warm(new ClosedVessel(60.BarGauge(), 20.Celsius()));
        Assert.True(dry.Pressure > 60.BarGauge());
        Assert.Contains(dry.Findings, f => f.Severity == FindingSeverity.Warning);
        var wet = Sun.Warm(new ClosedVessel(60.BarGauge(), 20.Celsius()) { WaterFraction = 33.Percent() });
        Assert.Equal(ResultStatus.Failed, wet.Status);
        Assert.Null(wet.Pressure);
        Assert.Contains(wet.Findings, f => f.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void Bad_sun_is_refused_in_a_sentence() =>
        Assert.Contains("absorptance is 1.2; it must be 0 to 1.",
            Assert.Throws<InvalidDesignException>(() => (Sun with { Absorptance = 1.2 }).Surface()).Message, StringComparison.Ordinal);
}

file static class FahrenheitLiteral
{
    public static Temperature Fahrenheit(this double degrees) => Temperature.FromDegreesFahrenheit(degrees);
}
