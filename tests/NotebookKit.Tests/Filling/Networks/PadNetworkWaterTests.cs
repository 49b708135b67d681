using NotebookKit.Filling.Networks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Published;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Networks;

public class PadNetworkWaterTests
{
    private static readonly HosePart Hose = new("hose", new Hose(4.Millimetres(), 5.Metres()));

    // 2 L of gas at 40 bar over 1 L of water, 90 mm bore, a hole of 4 mm and 0.62 in water.
    [Theory]
    [InlineData(FillHeat.Isothermal, false, 1.60696562)]
    [InlineData(FillHeat.Adiabatic, false, 1.68359552)]
    [InlineData(FillHeat.Isothermal, true, 1.60678953)]
    [InlineData(FillHeat.Adiabatic, true, 1.68340009)]
    [PublishedCase("L06", "Trapped gas drives 1 L of water out, with and without its head; quadrature (closed forms P05, P06)")]
    public void A_vessel_drains_with_the_head_of_its_water(FillHeat heat, bool standing, double seconds)
    {
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("vessel", new(3.Litres(), 90.Millimetres(), 45.BarGauge())) { WaterFraction =
                Ratio.FromDecimalFractions(1.0 / 3), Start = 40.BarGauge(), Heat = heat, Standing = standing }, new OutsideNode()],
            Links = [new("vessel", "outside", [new PassagePart("hole", new Orifice(4.Millimetres(), 0.8) { WaterCoefficient = 0.62 })])
                { FromPort = PortPosition.UnderWater }],
            Tolerance = 1e-10,
        };
        var run = pad.Fill(2.Seconds());
        var drained = run.Time.Values.Zip(run.Water("vessel").Values).First(p => p.Second <= 1.1e-6).First;
        Tolerance.Relative(seconds, drained, 1e-5);
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.EnergyError, 0, 1e-6);
    }

    // The head stands against what comes in: gas bubbles in until the gas above has the supply's pressure less the head, 0.3 L on 66 mm.
    [Fact]
    public void The_head_holds_gas_back_that_comes_from_below()
    {
        PadNetwork pad = new()
        {
            Nodes = [new SupplyNode("supply", 2.BarGauge()), new VesselNode("vessel", new(1.Litres(), 66.Millimetres(), 45.BarGauge()))
                { WaterFraction = 30.Percent(), Heat = FillHeat.Isothermal, Standing = true }],
            Links = [new("supply", "vessel", [new CheckValvePart("check valve", PadSamples.Coupling, 0.Bar())])
                { ToPort = PortPosition.UnderWater }],
        };
        var run = pad.Fill(2.Minutes());
        Tolerance.Absolute(2 - (1000 * 9.80665 * 3e-4 / (Math.PI / 4 * 0.066 * 0.066) / 1e5), run.End("vessel").Bar, 1e-5);
    }

    // 20 bar over 0.75 L push back into a hose of 62.8 mL that ends at 5 bar, and on into the supply. Time by a sum over the volume, gas
    // without heat: its hose alone, and all of the water.
    [Fact]
    public void Water_that_runs_back_fills_the_hose_and_goes_on()
    {
        PadNetwork pad = new()
        {
            Nodes = [new SupplyNode("supply", 5.BarGauge()), new VesselNode("vessel", PadSamples.Booster) { WaterFraction = 30.Percent(),
                Start = 20.BarGauge() }],
            Links = [new("supply", "vessel", [Hose, new PassagePart("hole", new Orifice(1.Millimetres(), 0.8))])
                { ToPort = PortPosition.UnderWater }],
            Tolerance = 1e-9,
        };
        var run = pad.Fill(1.Minutes());
        double hoseM3 = Math.PI / 4 * 0.004 * 0.004 * 5, gasM3 = 2.5e-3 * 0.7, sum = 0,
            areaM2 = WaterPassage.AreaM2(new RestrictorChain(Hose.Hose, new Orifice(1.Millimetres(), 0.8)), 1e4);
        double TimeOf(double waterM3)
        {
            sum = 0;
            for (var i = 0; i <= 2000; i++)
            {
                var drop = 21.01325e5 * Math.Pow(gasM3 / (gasM3 + waterM3 * i / 2000), 1.4) - 6.01325e5;
                sum += (i is 0 or 2000 ? 1 : i % 2 == 1 ? 4 : 2) / (areaM2 * Math.Sqrt(2 * drop / 1000));
            }

            return sum * waterM3 / 6000;
        }

        var filled = run.Time.Values.Zip(run.WaterIn("supply", "vessel").Values).First(p => p.Second >= 1e6 * hoseM3 * (1 - 1e-8))
            .First;
        Tolerance.Relative(TimeOf(hoseM3), filled, 1e-6);
        var drained = run.Time.Values.Zip(run.Water("vessel").Values).First(p => p.Second <= 1.1e-6).First;
        Tolerance.Relative(TimeOf(0.75e-3), drained, 1e-5);
        // Gas blows out what stood in the hose, and then follows it.
        Assert.InRange(run.WaterIn("supply", "vessel").Values[^1], 0, 1e-5);
        Tolerance.Relative(0.75, run.WaterPastHose("supply", "vessel").Liters, 1e-6);
        Assert.Contains(run.Flow("supply", "vessel").Values, g => g < 0);
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.EnergyError, 0, 1e-6);
        Assert.Contains(run.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("has filled the hose of the line supply to vessel and runs on into supply: 750 mL",
                StringComparison.Ordinal));
    }

    // Through a tee into its neighbour: p V^1.4 of both gases gives where they meet, a sum over the volume the time to half of it.
    [Fact]
    public void Water_that_runs_back_to_a_junction_goes_on_to_the_lowest_pressure()
    {
        PadNetwork pad = new()
        {
            Nodes = [new JunctionNode("tee"), new VesselNode("high", PadSamples.Booster) { WaterFraction = 30.Percent(),
                Start = 30.BarGauge() }, new VesselNode("low", PadSamples.Sustainer) { Start = 10.BarGauge() }],
            Links = [new("tee", "high", [Hose]) { ToPort = PortPosition.UnderWater },
                new("tee", "low", [new PassagePart("coupling", new Orifice(2.Millimetres(), 0.8))])],
            Tolerance = 1e-9,
        };
        var run = pad.Fill(1.Minutes());
        double hose = Math.PI / 4 * 0.004 * 0.004 * 5, low = 0, high = 0.68e-3,
            areaM2 = 1 / Math.Sqrt(Math.Pow(WaterPassage.AreaM2(Hose.Hose, 1e4), -2) + Math.Pow(0.6 * Math.PI * 1e-6, -2));
        double Drop(double past) => 31.01325e5 * Math.Pow(1.75e-3 / (1.75e-3 + hose + past), 1.4)
            - 11.01325e5 * Math.Pow(1.2e-3 / (1.2e-3 - past), 1.4);
        for (var i = 0; i < 60; i++)
        {
            var mid = 0.5 * (low + high);
            if (Drop(mid) > 0) low = mid;
            else high = mid;
        }

        Tolerance.Relative(1e6 * low, run.WaterPastHose("tee", "high").Milliliters, 1e-6);
        Tolerance.Relative(1e3 * low, run.Water("low").Values[^1], 1e-6);
        Tolerance.Relative(31.01325 * Math.Pow(1.75e-3 / (1.75e-3 + hose + low), 1.4), run.End("low").Bar + 1.01325, 1e-6);
        Tolerance.Relative(1e6 * hose, run.WaterIn("tee", "high").Values[^1], 1e-6);
        // At the row after half of it: what had come over by then.
        var (times, water) = (run.Time.Values, run.Water("low").Values);
        var row = water.ToList().FindIndex(w => w >= 500 * low);
        double sum = 0, over = water[row] / 1000;
        for (var i = 0; i <= 2000; i++)
            sum += (i is 0 or 2000 ? 1 : i % 2 == 1 ? 4 : 2) / (areaM2 * Math.Sqrt(2 * Drop(over * i / 2000) / 1000));
        var full = run.WaterIn("tee", "high").Values.ToList().FindIndex(w => w >= 1e6 * hose * (1 - 1e-8));
        Tolerance.Relative(sum * over / 6000, times[row] - times[full], 1e-5);
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.EnergyError, 0, 1e-6);
        Assert.Contains(run.Findings, f => f.Message.Contains("runs on through tee", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_hose_water_goes_straight_on_and_closes()
    {
        PadNetwork pad = new()
        {
            Nodes = [new SupplyNode("supply", 5.BarGauge()), new VesselNode("vessel", PadSamples.Booster) { WaterFraction = 30.Percent(),
                Start = 20.BarGauge() }],
            Links = [new("supply", "vessel", [new PassagePart("hole", PadSamples.Small)]) { ToPort = PortPosition.UnderWater }],
        };
        var run = pad.Fill(2.Minutes());
        Tolerance.Relative(0.75, run.WaterPastHose("supply", "vessel").Liters, 2e-6);
        Assert.Contains(run.Findings, f => f.Message.Contains("water fills the line supply to vessel and runs on into supply",
            StringComparison.Ordinal));
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.EnergyError, 0, 1e-6);
    }

    [Fact]
    public void Water_that_runs_back_into_a_cylinder_squeezes_its_gas()
    {
        PadNetwork pad = new()
        {
            Nodes = [new CylinderNode(new("cylinder", 2.Litres(), 5.BarGauge())), new VesselNode("vessel", PadSamples.Booster)
                { WaterFraction = 60.Percent(), Start = 20.BarGauge() }],
            Links = [new("cylinder", "vessel", [Hose]) { ToPort = PortPosition.UnderWater }],
        };
        var run = pad.Fill(2.Minutes());
        Tolerance.Absolute(run.End("vessel").Bar, run.End("cylinder").Bar, 1e-3);
        Tolerance.Relative(run.WaterPastHose("cylinder", "vessel").Liters, run.Water("cylinder").Values[^1], 1e-9);
        Tolerance.Relative(1.5, run.Water("cylinder").Values[^1] + run.Water("vessel").Values[^1]
            + (run.WaterIn("cylinder", "vessel").Values[^1] / 1000), 1e-9);
        Assert.InRange(run.MassError, 0, 1e-12);
        Assert.InRange(run.EnergyError, 0, 1e-6);
    }

    // The vessel is vented below the cylinder after a second of running back: what stands in the hose goes home before any gas does.
    [Fact]
    public void Water_in_the_hose_comes_back_first_when_the_pressure_turns()
    {
        PadNetwork pad = new()
        {
            Nodes = [new CylinderNode(new("cylinder", 2.Litres(), 15.BarGauge())), new VesselNode("vessel", PadSamples.Booster)
                { WaterFraction = 30.Percent(), Start = 16.BarGauge() }, new OutsideNode()],
            Links = [new("cylinder", "vessel", [Hose, new PassagePart("hole", new Orifice(1.Millimetres(), 0.8))])
                { ToPort = PortPosition.UnderWater },
                new("vessel", "outside", [new ValvePart("vent", PadSamples.Coupling) { Openings = [new(1.Seconds(), 3.Seconds())] }])],
        };
        var run = pad.Fill(1.Minutes());
        var water = run.WaterIn("cylinder", "vessel").Values;
        Assert.InRange(water.Max(), 1, 62.8);
        Assert.Equal(0, water[^1]);
        var gas = run.Flow("cylinder", "vessel").Values;
        Assert.All(water.Zip(gas).Where(p => p.First > 0.01), p => Assert.Equal(0, p.Second));
        Assert.Contains(gas, g => g > 0);
        Tolerance.Relative(0.75, run.Water("vessel").Values[^1], 1e-9);
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.EnergyError, 0, 1e-6);
    }

    // A vessel above its manifold with its port under water gives the manifold no gas while it has water.
    [Fact]
    public void A_manifold_gets_no_gas_from_under_water()
    {
        PadNetwork pad = new()
        {
            Nodes = [new SupplyNode("supply", 10.BarGauge()), new JunctionNode("tee"), new VesselNode("high", PadSamples.Booster)
                { WaterFraction = 30.Percent(), Start = 30.BarGauge() }, new VesselNode("low", PadSamples.Sustainer)],
            Links = [new("supply", "tee", [new CheckValvePart("check valve", PadSamples.Small, 0.Bar())]),
                new("tee", "high", [Hose]) { ToPort = PortPosition.UnderWater }, new("tee", "low", [new PassagePart("coupling",
                    PadSamples.Coupling)])],
        };
        var run = pad.Fill(1.Minutes());
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.EnergyError, 0, 1e-6);
        Tolerance.Relative(62.83185307, run.WaterIn("tee", "high").Values.Max(), 1e-7);
        var wet = run.Water("high").Values.Zip(run.Flow("tee", "high").Values).Where(p => p.First > 1e-5).ToList();
        Assert.True(wet.Count > 10);
        Assert.All(wet, p => Assert.Equal(0, p.Second));
        // Water and gas of the supply meet in the tee and share the way to the neighbour; the gas of the vessel follows its water.
        Tolerance.Relative(0.75, run.Water("low").Values[^1], 1e-6);
        Assert.True(run.Flow("supply", "tee").Values.Max() > 0);
        Tolerance.Absolute(run.End("high").Bar, run.End("low").Bar, 1e-3);
    }

    // Water ahead of a fill takes less than the bound of the plain fill, which counts the least drop throughout, and more than at the whole
    // drop.
    [Fact]
    public void Water_in_the_line_takes_no_longer_than_the_plain_fill_has_it()
    {
        PadFill fill = new()
        {
            Chamber = PadSamples.Booster, Supply = 45.BarGauge(), Restrictor = new Orifice(0.5.Millimetres(), 0.8), Target = 40.BarGauge(),
            WaterFraction = 32.Percent(), Port = PortPosition.UnderWater, WaterInLine = 50.Millilitres(), HasCheckValve = true,
        };
        var bound = (fill.Run().DurationWithWater - fill.Run().Duration)!.Value.Seconds;
        var pad = PadSamples.Single(fill) with { Tolerance = 1e-9 };
        var run = (pad with { Links = [pad.Links[0] with { WaterInLine = fill.WaterInLine, ToPort = PortPosition.UnderWater,
            Parts = [.. pad.Links[0].Parts, new CheckValvePart("check", new SonicRestrictor(50.LitresPerSecondBar(), 0.3), 0.Bar())] }] })
            .Fill(1.Minutes());
        var gone = run.Time.Values.Zip(run.WaterIn("supply", "vessel").Values).First(p => p.Second <= 1.1e-3).First;
        var least = 50e-6 / (WaterPassage.AreaM2(fill.Restrictor, 45e5) * Math.Sqrt(2 * 45e5 / 1000));
        Assert.InRange(gone, least, bound);
        Assert.InRange(bound / least, 1, 1.05);
    }
}
