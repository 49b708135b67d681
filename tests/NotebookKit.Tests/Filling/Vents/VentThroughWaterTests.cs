using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Vents;

public class VentThroughWaterTests
{
    private static readonly Vent Abort = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()),
        Restrictor = new Orifice(1.Millimetres(), 0.8),
        From = 40.BarGauge(),
        WaterFraction = 32.Percent(),
        Port = PortPosition.UnderWater,
    };

    // No heat from the wall: two ways for the water, two from each for the gas.
    private static readonly Vent Bounds = Abort with { Gas = Gas.Air with { Real = null } };

    // 0.8 L through 0.6 of 1 mm, then 2.5 L through 0.8 of it, both summed in another program. Water 21.1285201 s (n = 1) to 26.87576 bar
    // gauge, or 22.0804809 s (n = 1.4) to 22.8888832 bar gauge at 251.2427 K; then gas in 60.2207339 s or 66.0452306 s, or 61.2735045 s or
    // 68.0031318 s. The cold gas is the slowest.
    [Fact]
    public void Water_first_and_then_gas_by_an_independent_sum()
    {
        var result = Bounds.Run();
        Tolerance.Relative(22.0804809 + 68.0031318, result.Slowest.Seconds, 1e-6);
        Tolerance.Relative(22.0804809, result.WaterFirst!.WaterTime.Seconds, 1e-7);
        Tolerance.Relative(68.0031318, result.WaterFirst.GasTime.Seconds, 1e-6);
        Tolerance.Relative(21.1285201 + 60.2207339, result.Fastest.Seconds, 1e-6);
        Tolerance.Relative(50.1640333, result.SlowestGasAlone.Seconds, 1e-6);
    }

    // The vent is said to lie above the water; a vessel that fell over has all of it at the vent, by the same sums as above.
    [Fact]
    public void What_people_wait_for_is_twice_the_time_of_a_vessel_that_fell_over()
    {
        var result = (Bounds with { Port = PortPosition.AboveWater }).Run();
        Assert.Null(result.WaterFirst);
        Tolerance.Relative(50.1640333, result.Slowest.Seconds, 1e-6);
        Tolerance.Relative(22.0804809 + 68.0031318, result.WorstState.Seconds, 1e-6);
        Assert.Equal("180 s", result.Lines.Single(l => l.Name == "Minimum wait").Value);
    }

    [Fact]
    public void The_coldest_gas_is_the_coldest_of_all_ways()
    {
        var wet = Bounds.Run();
        Assert.Equal(Math.Min(wet.WaterFirst!.ColdestGas.DegreesCelsius, wet.Adiabatic.Temperature.Values.Min()),
            wet.ColdestGas.DegreesCelsius, 9);
        var warm = Abort.Run();
        Assert.Equal(Math.Min(warm.WaterFirst!.ColdestGas.DegreesCelsius, warm.WithWall!.Temperature.Values.Min()),
            warm.ColdestGas.DegreesCelsius, 9);
    }

    [Fact]
    public void The_longer_time_is_shown_in_its_parts_and_warned_of()
    {
        var result = Abort.Run();
        Assert.True(result.WaterFirst!.Total.Seconds >= 90.08);
        Tolerance.Absolute(result.Slowest.Seconds, result.WaterFirst.WaterTime.Seconds + result.WaterFirst.GasTime.Seconds, 1e-9);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("The vent lies under water", StringComparison.Ordinal));
        Assert.Equal(["Water first", "Then gas", "Water first, then gas", "Gas alone"], result.Lines.Skip(2).Take(4).Select(l => l.Name));
        Assert.Equal(5, result.Working.Steps.Count);
        Assert.Equal(40, result.WaterFirst.Curve.Pressure[0], 9);
        Assert.Equal(0.1, result.WaterFirst.Curve.Pressure[^1], 6);
        Assert.Equal(result.WaterFirst.Curve.Time.Values.Order(), result.WaterFirst.Curve.Time.Values);
    }

    [Fact]
    public void A_position_not_given_counts_as_the_worse_one()
    {
        var (under, open, above) = (Abort.Run(), (Abort with { Port = PortPosition.NotGiven }).Run(),
            (Abort with { Port = PortPosition.AboveWater }).Run());
        Assert.Equal(under.Slowest, open.Slowest);
        Assert.Equal(above.Fastest, open.Fastest);
        Assert.Contains(open.Findings, f => f.Message.Contains("where the vent lies isn't given", StringComparison.Ordinal));
        Assert.Null(above.WaterFirst);
        Assert.True(above.Slowest < under.Slowest);
        Assert.DoesNotContain(above.Findings, f => f.Message.Contains("water", StringComparison.Ordinal));
        Assert.Null((Abort with { WaterFraction = Ratio.Zero }).Run().WaterFirst);
    }

    // 95 % water over a little gas: at constant temperature 0.1 bar gauge is reached at 0.125 L × 41.01325/1.11325 = 4.605 L, past the
    // vessel's 2.5 L; from 1 bar gauge
    // already at 0.125 L × 2.01325/1.11325 = 0.22605 L.
    [Fact]
    public void Water_that_stays_behind_is_told()
    {
        var result = (Bounds with { WaterFraction = 95.Percent(), From = 1.BarGauge() }).Run();
        Tolerance.Relative(2.375 - (0.125 * 2.01325 / 1.11325 - 0.125), result.WaterFirst!.Drain.WaterLeft.Liters, 1e-6);
        Assert.Equal(0, result.WaterFirst.GasTime.Seconds, 9);
        Assert.Contains(result.Findings, f => f.Message.Contains("of water still inside", StringComparison.Ordinal));
    }

    [Fact]
    public void A_restrictor_known_by_its_gas_flow_passes_half_of_its_area_and_says_that_this_has_no_source()
    {
        var valve = new SonicRestrictor(0.13.LitresPerSecondBar(), 0.4);
        var result = (Abort with { Restrictor = valve }).Run();
        Tolerance.Relative(valve.EffectiveArea.SquareMillimeters / 2, result.WaterFirst!.Drain.Drain.EffectiveArea.SquareMillimeters, 1e-9);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("has a source", StringComparison.Ordinal));
        Assert.Contains(result.Model.Sources, s => s.Kind == SourceKind.CommonPractice);
        Assert.DoesNotContain(Abort.Run().Findings, f => f.Message.Contains("has a source", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hole_s_own_coefficient_in_water_counts_where_given()
    {
        double Seconds(Orifice hole) => (Bounds with { Restrictor = hole }).Run().WaterFirst!.WaterTime.Seconds;
        Tolerance.Relative(0.6 / 0.5, Seconds(new Orifice(1.Millimetres(),
            0.8) { WaterCoefficient = 0.5 }) / Seconds(new Orifice(1.Millimetres(), 0.8)), 1e-9);
        Assert.Contains("coefficient in water", Assert.Throws<InvalidDesignException>(() => Seconds(new Orifice(1.Millimetres(),
            0.8) { WaterCoefficient = 2 })).Message, StringComparison.Ordinal);
    }

    // Laminar in a thin long hose: Hagen and Poiseuille's Q = π d⁴ Δp/(128 μ L); losses at its ends make it a little less.
    [Fact]
    public void A_thin_long_hose_holds_water_back_as_laminar_flow_does()
    {
        const double drop = 1e4;
        var flow = WaterPassage.AreaM2(new Hose(1.Millimetres(), 20.Metres()), drop) * Math.Sqrt(2 * drop / 1000);
        Tolerance.Relative(Math.PI * 1e-12 * drop / (128 * 1.79e-3 * 20), flow, 1e-3);
    }

    [Fact]
    public void More_water_under_the_same_gas_is_never_out_sooner() =>
        Gen.Select(Gen.Double[1, 80], Gen.Double[0.2, 3], Gen.Double[0.05, 3], Gen.Double[0.01, 2], Gen.Double[1, 1.5]).Sample(
            (bar, gas, water, more, exponent) =>
            {
                WaterDrain drain = new() { From = bar.BarGauge(), GasVolume = gas.Litres(), WaterVolume = water.Litres(),
                    EffectiveArea = Area.FromSquareMillimeters(0.5), Exponent = exponent };
                WaterDrainResult less = drain.Run(), longer = (drain with { WaterVolume = (water + more).Litres() }).Run();
                Assert.True(longer.Duration.Seconds >= less.Duration.Seconds * (1 - 1e-9));
                Assert.True(longer.PressureThen.Pascals <= less.PressureThen.Pascals + 1);
            },
            iter: 300);

    [Fact]
    public void More_water_under_the_same_gas_never_makes_a_vent_shorter() =>
        Gen.Select(Gen.Double[10, 44], Gen.Double[0.05, 0.5], Gen.Double[0.01, 0.2]).Sample(
            (bar, share, more) =>
            {
                double Seconds(double water) => (Bounds with
                {
                    From = bar.BarGauge(), WaterFraction = Ratio.FromDecimalFractions(water),
                        Chamber = Bounds.Chamber with { Volume = (1 / (1 - water)).Litres() },
                }).Run().Slowest.Seconds;
                Assert.True(Seconds(share + more) > Seconds(share));
            },
            iter: 40);

    [Theory]
    [InlineData(GasProperties.Ideal, 60, 95)]
    [InlineData(GasProperties.Ideal, 60, 5)]
    [InlineData(GasProperties.Real, 60, 60)]
    [InlineData(GasProperties.Real, 60, 95)]
    [InlineData(GasProperties.Real, 200, 90)]
    [InlineData(GasProperties.Real, 2, 50)]
    public void Gas_that_little_room_left_cold_is_followed_to_the_end(GasProperties properties, double bar, double percent)
    {
        var result = (Abort with { Chamber = Abort.Chamber with { RatedPressure = 250.BarGauge() }, From = bar.BarGauge(),
            WaterFraction = percent.Percent(), Properties = properties }).Run();
        Assert.True(result.WaterFirst!.Total.Seconds > result.WaterFirst.WaterTime.Seconds - 1e-9);
        Assert.Equal(0.1, result.WaterFirst.Curve.Pressure[^1], 5);
        Assert.True(result.WaterFirst.Curve.Temperature.Values.All(double.IsFinite));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Contains("position of the vent", Assert.Throws<InvalidDesignException>(() => (Abort
            with { Port = (PortPosition)7 }).Run()).Message, StringComparison.OrdinalIgnoreCase);
        WaterDrain drain = new() { From = 0.BarGauge(), GasVolume = 1.Litres(), WaterVolume = 1.Litres(),
            EffectiveArea = Area.FromSquareMillimeters(1) };
        Assert.Contains("no pressure drives the water out", Assert.Throws<InvalidDesignException>(() => drain.Run()).Message,
            StringComparison.OrdinalIgnoreCase);
        var wrong = Assert.Throws<InvalidDesignException>(() => (drain
            with { From = 400.BarGauge(), WaterVolume = Volume.Zero, EffectiveArea = Area.Zero, Exponent = 2 }).Run()).Message;
        Assert.All(["pressure at the start", "volume of the water", "effective area", "exponent of the gas"],
            part => Assert.Contains(part, wrong, StringComparison.OrdinalIgnoreCase));
    }
}
