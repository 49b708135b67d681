using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Balances;

public class GasThroughWaterTests
{
    // The gas that drove the water out without heat: 3 L at 23.2485795 bar and 249.260462 K.
    private static readonly GasThroughWater Cold = new()
    {
        Pressure = 23.2485795.BarAbsolute(), Temperature = 249.260462.Kelvins(), GasSpace = 3.Litres(), Water = 1.Kilograms(),
        WaterTemperature = 293.15.Kelvins(),
    };

    [Fact]
    public void The_truth_lies_between_the_bounds_of_a_drain_without_heat_and_at_one_temperature()
    {
        WaterDrain drain = new() { From = 40.BarGauge(), GasVolume = 2.Litres(), WaterVolume = 1.Litres(),
            EffectiveArea = UnitsNet.Area.FromSquareMillimeters(1) };
        var result = Cold.Run();
        var ambient = AbsolutePressure.StandardSeaLevel;
        Tolerance.Relative((drain with { Exponent = 1.4 }).Run().PressureThen.ToAbsolute(ambient).Pascals, result.WithoutContact.Pascals,
            1e-6);
        Tolerance.Relative(drain.Run().PressureThen.ToAbsolute(ambient).Pascals + result.Vapour.Pascals, result.FullContact.Pascals, 1e-6);
    }

    [Fact]
    public void Too_little_water_is_no_bath_and_ice_is_refused()
    {
        Assert.Contains((Cold with { Water = 100.Grams() }).Run().Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("takes the water's temperature as fixed", StringComparison.Ordinal));
        Assert.DoesNotContain(Cold.Run().Findings, f => f.Severity == FindingSeverity.Warning);
        Assert.Contains("water temperature", Assert.Throws<InvalidDesignException>(() => (Cold
            with { WaterTemperature = (-3).Celsius() }).Run()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fill_under_water_says_both_bounds_and_one_above_it_says_none()
    {
        PadFill fill = new()
        {
            Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()), Supply = 45.BarGauge(), Target = 40.BarGauge(),
            Restrictor = new Orifice(0.5.Millimetres(), 0.8), WaterFraction = 32.Percent(), Port = PortPosition.UnderWater,
        };
        var wet = fill.Run();
        Assert.True(wet.LongestThroughWater > wet.Duration);
        Tolerance.Relative((fill with { Heat = FillHeat.Isothermal }).Run().Duration.Seconds, wet.LongestThroughWater!.Value.Seconds,
            1e-12);
        Assert.InRange(wet.ThroughWater!.FullContact.Pascals, wet.SettledPressure.Pascals + 101325, wet.SettledPressure.Pascals + 104000);
        var dry = (fill with { Port = PortPosition.AboveWater }).Run();
        Assert.Null(dry.LongestThroughWater);
        Assert.Null(dry.ThroughWater);
        var placed = (fill with { Port = PortPosition.NotGiven, Place = new(0.Percent(), VesselStance.Standing) }).Run();
        Assert.NotNull(placed.ThroughWater);
    }
}
