using NotebookKit.Filling.Networks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Networks;

public class PadNetworkWarmthTests
{
    private static readonly Area Bore = Area.FromSquareMeters(Math.PI / 4 * 0.066 * 0.066);

    private static readonly PadFill Wet = new()
    {
        Chamber = PadSamples.Booster, Supply = 45.BarGauge(), Restrictor = new Orifice(0.5.Millimetres(), 0.8), Target = 40.BarGauge(),
        WaterFraction = 32.Percent(), Heat = FillHeat.Wall,
        Wall = FillWall.Of(PadSamples.Booster, 32.Percent()) with { WaterSurface = Bore },
    };

    [Theory]
    [InlineData(GasProperties.Ideal, PortPosition.AboveWater)]
    [InlineData(GasProperties.Ideal, PortPosition.UnderWater)]
    [InlineData(GasProperties.Real, PortPosition.UnderWater)]
    public void One_vessel_over_its_water_is_filled_as_a_plain_fill_is(GasProperties properties, PortPosition port)
    {
        var fill = Wet with { Properties = properties, Port = port };
        var single = PadSamples.Single(fill) with { Tolerance = 1e-9 };
        var pad = (single with { Links = [single.Links[0] with { ToPort = port }] }).Fill(5.Minutes());
        var alone = fill.Run();
        var shut = pad.ShutAt("valve")!.Value.Seconds;
        Tolerance.Relative(alone.Duration.Seconds, shut, 1e-6);
        Tolerance.Relative(alone.SettledPressure.Pascals, pad.Settled("vessel").Pascals, 1e-6);
        var row = pad.Time.Values.ToList().FindIndex(t => Math.Abs(t - shut) < 1e-9);
        Tolerance.Absolute(alone.ShutTemperature.DegreesCelsius, pad.Temperature("vessel").Values[row], 1e-4);
        var shutAt = alone.Time.Values.ToList().FindIndex(t => Math.Abs(t - alone.Duration.Seconds) < 1e-9);
        Tolerance.Absolute(alone.WaterTemperature!.Values[shutAt], pad.WaterTemperature("vessel").Values[row], 1e-6);
        // A real gas comes colder than the supply by its throttling, and cools the water.
        Assert.InRange((pad.WaterTemperature("vessel").Values[row] - 20) * (properties == GasProperties.Real ? -1 : 1), 0.001, 1);
        Assert.InRange(pad.EnergyError, 0, 1e-6);
    }

    // The same equations in SciPy, Radau at 1e-11 and LSODA at 1e-12, which agree to eleven digits: film of 60 W/(m²·K), wall of 250 J/K.
    [Theory]
    [InlineData(PortPosition.AboveWater, 47.1102639095, 38.770910918, 29.9993862851, 20.79153910296)]
    [InlineData(PortPosition.UnderWater, 47.0903564489, 38.896013516, 30.0374758179, 20.78584250741)]
    public void Gas_wall_and_water_warm_as_in_another_program(PortPosition port, double seconds, double gas, double wall, double water)
    {
        var fill = Wet with { Port = port, Wall = new() { Surface = Area.FromSquareMeters(0.12),
            WaterSurface = Area.FromSquareMeters(0.05), Bore = 66.Millimetres(),
            Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(60), HeatCapacity = Entropy.FromJoulesPerKelvin(250) } };
        var single = PadSamples.Single(fill);
        var run = (single with { Links = [single.Links[0] with { ToPort = port }] }).Fill(1.Minutes());
        var shut = run.ShutAt("valve")!.Value.Seconds;
        Tolerance.Relative(seconds, shut, 1e-8);
        Tolerance.Relative(seconds, fill.Run().Duration.Seconds, 1e-6);
        var row = run.Time.Values.ToList().FindIndex(t => Math.Abs(t - shut) < 1e-9);
        Tolerance.Absolute(gas, run.Temperature("vessel").Values[row], 1e-6);
        Tolerance.Absolute(wall, run.WallTemperature("vessel").Values[row], 1e-6);
        Tolerance.Absolute(water, run.WaterTemperature("vessel").Values[row], 1e-7);
    }

    // As lecture notes print them: 0.54 Ra^(1/4) to 1e7, 0.15 Ra^(1/3) above, 0.27 Ra^(1/4) where the layers lie quiet; where the first two
    // meet lies below the printed 1e7, and what is between errs by 7 %.
    [Theory]
    [InlineData(false, 1e6, 17.0763)]
    [InlineData(false, 1e9, 150)]
    [InlineData(true, 1e8, 27)]
    public void A_level_surface_has_the_printed_nusselt_numbers(bool gasIsWarmer, double rayleigh, double nusselt)
    {
        Tolerance.Relative(nusselt, FreeConvection.NusseltOverSurface(gasIsWarmer, rayleigh), 1e-4);
        Assert.InRange(FreeConvection.NusseltOverSurface(false, 1e7) / (0.54 * Math.Pow(1e7, 0.25)), 1, 1.07);
    }

    // Gas alone at rest over water, no wall's heat worth naming: both end as warm, by their heat capacities alone.
    [Fact]
    public void Gas_and_water_end_equally_warm()
    {
        FillWall wall = new() { Surface = Bore + Area.FromSquareMillimeters(1), WaterSurface = Bore, Bore = 66.Millimetres(),
            Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(2000), HeatCapacity = Entropy.FromJoulesPerKelvin(0.1),
            Outside = HeatTransferCoefficient.Zero };
        PadNetwork pad = new()
        {
            Nodes = [new CylinderNode(new("cylinder", 1.Litres(), 80.BarGauge())), new VesselNode("vessel", PadSamples.Booster)
                { WaterFraction = 4.Percent(), Heat = FillHeat.Wall, Wall = wall }],
            Links = [new("cylinder", "vessel", [new ValvePart("valve", PadSamples.Coupling) { Openings = [new(Duration.Zero,
                20.Seconds())] }])],
            Tolerance = 1e-9,
        };
        var run = pad.Fill(20.Minutes());
        var (gas, water) = (run.Temperature("vessel").Values[^1], run.WaterTemperature("vessel").Values[^1]);
        Tolerance.Absolute(gas, water, 1e-4);
        // Shut off at 20 s: what the gas then held above the end, over m c of the water.
        var row = run.Time.Values.ToList().FindIndex(t => t >= 20);
        double cv = 287.05287 / 0.4, volume = 2.4e-3, waterKg = 0.1;
        var p = (run.Pressure("vessel").Values[row] * 1e5) + 101325;
        var gasKg = p * volume / (287.05287 * (run.Temperature("vessel").Values[row] + 273.15));
        var given = gasKg * cv * (run.Temperature("vessel").Values[row] - gas);
        var wallTook = 0.1 * (run.WallTemperature("vessel").Values[^1] - run.WallTemperature("vessel").Values[row]);
        Tolerance.Relative((given - wallTook) / (waterKg * 4182), water - run.WaterTemperature("vessel").Values[row], 1e-5);
        Assert.InRange(run.EnergyError, 0, 1e-7);
    }

    // Warm water goes with its warmth, through hoses and a junction, and the sum over everything stays.
    [Fact]
    public void Energy_closes_where_warm_water_runs_from_vessel_to_vessel()
    {
        FillWall Over(Chamber chamber) => FillWall.Of(chamber, 30.Percent()) with { WaterSurface = Bore };
        PadNetwork pad = new()
        {
            Nodes = [new CylinderNode(new("cylinder", 3.Litres(), 90.BarGauge())), new JunctionNode("tee"),
                new VesselNode("high", PadSamples.Booster) { WaterFraction = 30.Percent(), Heat = FillHeat.Wall,
                    Wall = Over(PadSamples.Booster) },
                new VesselNode("low", PadSamples.Sustainer) { WaterFraction = 10.Percent(), Heat = FillHeat.Wall,
                    Wall = Over(PadSamples.Sustainer) }],
            Links = [new("cylinder", "high", [new RegulatorPart("regulator", 40.BarGauge()), new PassagePart("hole", PadSamples.Small)]),
                new("tee", "high", [new HosePart("hose", new(4.Millimetres(), 5.Metres()))]) { ToPort = PortPosition.UnderWater },
                new("tee", "low", [new PassagePart("coupling", PadSamples.Coupling)])],
        };
        var run = pad.Fill(1.Minutes());
        Assert.Equal(ResultStatus.Completed, run.Status);
        Assert.True(run.Water("low").Values[^1] > 0.3);
        Assert.True(run.WaterTemperature("low").Values[^1] > 20.01);
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.EnergyError, 0, 1e-6);
    }

    // Water that the fill warms gives more vapour than at the start: the warmest it was counts, between the 23.39 mbar of 20 °C
    // and the 24.88 mbar of 21 °C in a steam table. A vessel without water has none.
    [Fact]
    public void Vapour_is_that_of_the_water_at_its_warmest()
    {
        var single = PadSamples.Single(Wet);
        var run = (single with { Tolerance = 1e-7 }).Fill(1.Minutes());
        var warmest = run.WaterTemperature("vessel").Values.Max();
        Assert.InRange(warmest, 20.01, 22);
        Tolerance.Relative(23.39 + (1.49 * (warmest - 20)), run.SaturatedVapour("vessel")!.Value.Pascals / 100, 3e-3);
        Assert.Contains(run.Lines, l => l.Name == "Vapour in vessel"
            && l.Value.EndsWith("mbar, by the water alone", StringComparison.Ordinal));
        Assert.Null((single with { Nodes = [single.Nodes[0], new VesselNode("vessel", PadSamples.Booster)], Tolerance = 1e-7 })
            .Fill(1.Seconds()).SaturatedVapour("vessel"));
        // Shut 10 mbar below the rating.
        var close = (single with { Links = [single.Links[0] with { Parts = [new ValvePart("valve", Wet.Restrictor) { ShutsAt =
            44.99.BarGauge() }] }], Nodes = [new SupplyNode("supply", 60.BarGauge()), single.Nodes[1]], Tolerance = 1e-7 })
            .Fill(1.Minutes());
        Assert.Contains(close.Findings, f => f.Message.Contains("vapour of its water can add some", StringComparison.Ordinal));
        Assert.DoesNotContain(run.Findings, f => f.Message.Contains("vapour", StringComparison.Ordinal));
    }

    [Fact]
    public void A_surface_without_water_and_one_above_the_wall_are_refused()
    {
        Assert.Contains("has no water", Assert.Throws<InvalidDesignException>(() => (Wet with { WaterFraction = 0.Percent() }).Run())
            .Message, StringComparison.Ordinal);
        Assert.Contains((Wet.Wall! with { WaterSurface = 1.SquareMetres() }).Validate(),
            f => f.Message.Contains("surface of the water", StringComparison.OrdinalIgnoreCase));
    }
}
