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

    // A sphere of one temperature whose surface is held at another: SciPy, 12,800 shells, Radau at 1e-9.
    [Theory]
    [InlineData(0.005, 0.2243654)]
    [InlineData(0.02, 0.4187307)]
    [InlineData(0.05, 0.6069398)]
    [InlineData(0.1, 0.7704787)]
    [InlineData(0.3, 0.9685245)]
    public void A_sphere_gives_off_its_heat_as_another_program_has_it(double fourier, double share) =>
        Tolerance.Relative(share, BubbleRise.SphereShare(fourier), 2e-6);

    // 1 g/s at 30 bar and 20 °C under 0.3 m of water: the published laws with a calculator.
    [Fact]
    public void A_bubble_has_the_size_and_speed_of_the_published_laws()
    {
        GasThroughWater warm = Cold with { Pressure = 30.BarAbsolute(), Temperature = 20.Celsius(),
            Flow = UnitsNet.MassFlow.FromGramsPerSecond(1), Depth = 0.3.Metres() };
        var bubble = warm.Run().Rise!;
        Tolerance.Relative(13.21148425, bubble.Diameter.Millimeters, 1e-6);
        Tolerance.Relative(0.277885170, bubble.Speed.MetersPerSecond, 1e-6);
        Tolerance.Relative(1.079582619, bubble.Time.Seconds, 1e-6);
        Assert.InRange(bubble.StillShare.Percent, 35, 45);
        Assert.True(bubble.CirculatingShare > bubble.StillShare);
        // A tenth of the flow makes bubbles of a sixteenth of the volume, which come far nearer.
        Assert.InRange((warm with { Flow = UnitsNet.MassFlow.FromGramsPerSecond(0.1) }).Run().Rise!.StillShare.Percent, 75, 100);
        // A thin gas carries heat better: at 3 bar the same mass comes nearer, though its bubbles are larger.
        Assert.True((warm with { Pressure = 3.BarAbsolute() }).Run().Rise!.StillShare > bubble.StillShare);
        Assert.Null((warm with { Depth = null }).Run().Rise);
        Assert.Null(Cold.Run().Rise);
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
        // 0.8 L on 66 mm.
        Tolerance.Relative(0.8e-3 / (Math.PI / 4 * 0.066 * 0.066), wet.ThroughWater.Contact.Depth!.Value.Meters, 1e-9);
        Assert.InRange(wet.ThroughWater.Rise!.StillShare.Percent, 20, 90);
        Assert.Null((fill with { Port = PortPosition.NotGiven, Place = new(50.Percent(), VesselStance.Lying),
            WaterFraction = 80.Percent() }).Run().ThroughWater!.Rise);
        var dry = (fill with { Port = PortPosition.AboveWater }).Run();
        Assert.Null(dry.LongestThroughWater);
        Assert.Null(dry.ThroughWater);
        var placed = (fill with { Port = PortPosition.NotGiven, Place = new(0.Percent(), VesselStance.Standing) }).Run();
        Assert.NotNull(placed.ThroughWater);
    }
}
