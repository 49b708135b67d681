using CsCheck;
using NotebookKit.Filling.Networks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Published;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Networks;

public class PadNetworkTeeTests
{
    private static PassagePart Hole(double millimetres, double water = 0.6) =>
        new("hole", new Orifice(millimetres.Millimetres(), 0.8) { WaterCoefficient = water });

    private static double DryAt(PadNetworkResult run) =>
        run.Time.Values.Zip(run.Water("vessel").Values).First(p => p.Second <= 1.1e-6).First;

    // Two holes one behind the other whose areas for water, by the sum of squares, make up one of 4 mm.
    [Theory]
    [InlineData(FillHeat.Isothermal, false, 1.60696562)]
    [InlineData(FillHeat.Adiabatic, false, 1.68359552)]
    [InlineData(FillHeat.Isothermal, true, 1.60678953)]
    [InlineData(FillHeat.Adiabatic, true, 1.68340009)]
    [PublishedCase("L06", "Trapped gas drives 1 L of water out, with and without its head; quadrature (closed forms P05, P06)")]
    public void A_vessel_drains_through_a_tee_to_the_outside(FillHeat heat, bool standing, double seconds)
    {
        var each = 4 * Math.Pow(2, 0.25);
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("vessel", new(3.Litres(), 90.Millimetres(), 45.BarGauge())) { WaterFraction =
                Ratio.FromDecimalFractions(1.0 / 3), Start = 40.BarGauge(), Heat = heat, Standing = standing }, new JunctionNode("tee"),
                new OutsideNode()],
            Links = [new("vessel", "tee", [Hole(each, 0.62)]) { FromPort = PortPosition.UnderWater }, new("tee", "outside",
                [Hole(each, 0.62)])],
            Tolerance = 1e-10,
        };
        var run = pad.Fill(2.Seconds());
        Tolerance.Relative(seconds, DryAt(run), 1e-5);
        Tolerance.Relative(1, run.WaterOut.Liters, 1e-6);
        Assert.InRange(run.WaterError, 0, 1e-12);
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.EnergyError, 0, 1e-6);
        // Two branches of half the area each are one branch.
        var half = each / Math.Sqrt(2);
        var both = (pad with { Nodes = [.. pad.Nodes, new OutsideNode("drain")], Links = [pad.Links[0],
            new("tee", "outside", [Hole(half, 0.62)]), new("tee", "drain", [Hole(half, 0.62)])] }).Fill(2.Seconds());
        Tolerance.Relative(seconds, DryAt(both), 1e-5);
        // So is a second tee between them, with holes that make up the same.
        var third = 4 * Math.Pow(3, 0.25);
        var twice = (pad with { Nodes = [.. pad.Nodes, new JunctionNode("next")], Links =
            [pad.Links[0] with { Parts = [Hole(third, 0.62)] }, new("tee", "next", [Hole(third, 0.62)]),
                new("next", "outside", [Hole(third, 0.62)])] }).Fill(2.Seconds());
        Tolerance.Relative(seconds, DryAt(twice), 1e-5);
        Assert.InRange(twice.WaterError, 0, 1e-12);
    }

    // Written again in SciPy 1.10 (DOP853 at 1e-12, the tee's pressure by brentq): 0.8 L under 40 bar through 1 mm to a tee, which a
    // supply of 20 bar blows into through 0.5 mm, and out through 1.2 mm. Water and gas share the way out, then gas and gas.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Gas_that_meets_the_water_in_a_tee_holds_it_back_as_in_another_program(bool linkedTheOtherWay)
    {
        PadLink line = linkedTheOtherWay ? new("tee", "vessel", [Hole(1)]) { ToPort = PortPosition.UnderWater }
            : new("vessel", "tee", [Hole(1)]) { FromPort = PortPosition.UnderWater };
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("vessel", PadSamples.Booster) { WaterFraction = 32.Percent(), Start = 40.BarGauge() },
                new SupplyNode("supply", 20.BarGauge()), new JunctionNode("tee"), new OutsideNode()],
            Links = [line, new("supply", "tee", [new CheckValvePart("check valve", new Orifice(0.5.Millimetres(), 0.8), 0.Bar())]),
                new("tee", "outside", [Hole(1.2)])],
            Tolerance = 1e-10, Temperature = 293.15.Kelvins(),
        };
        var run = pad.Fill((38.36098077045412 + 30).Seconds());
        // The last microlitre isn't awaited: 2e-6 of the time.
        Tolerance.Relative(38.3609807705, DryAt(run), 3e-6);
        Tolerance.Relative(5.5505769675, run.End("vessel").Bar, 3e-6);
        Tolerance.Absolute(-99.47876966, run.Temperature("vessel").Values[^1], 1e-4);
        Tolerance.Relative(0.8, run.WaterOut.Liters, 2e-6);
        // The other line begins by filling a hose that it hasn't.
        if (!linkedTheOtherWay) Tolerance.Relative(19.888004404139323, run.Pressure("tee").Values[0], 1e-6);
        // Without the gas of the supply.
        Tolerance.Relative(26.8825033636, DryAt((pad with { Links = [line, pad.Links[2]] }).Fill(30.Seconds())), 3e-6);
        Assert.Contains(run.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.StartsWith("Water of", StringComparison.Ordinal));
    }

    // Shut at 30 bar, it lets out what the gas at one temperature needs to come down to that: V (41.01325/31.01325 − 1). Behind a tee
    // and at the vessel itself.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_relief_valve_that_water_goes_out_through_shuts_again(bool behindTee)
    {
        ReliefPart relief = new("relief valve", new Orifice(2.Millimetres(), 0.8), 30.BarGauge()) { Overpressure = 1.Percent() };
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("vessel", PadSamples.Booster) { WaterFraction = 40.Percent(), Start = 40.BarGauge(),
                Heat = FillHeat.Isothermal }, new JunctionNode("tee"), new OutsideNode()],
            Links = behindTee ? [new("vessel", "tee", [Hole(4)]) { FromPort = PortPosition.UnderWater }, new("tee", "outside", [relief])]
                : [new("vessel", "outside", [relief]) { FromPort = PortPosition.UnderWater }],
        };
        var run = pad.Fill(5.Minutes());
        Tolerance.Relative(1.5 * (41.01325 / 31.01325 - 1), run.WaterOut.Liters, 1e-4);
        Tolerance.Absolute(30, run.End("vessel").Bar, 1e-3);
    }

    // Back through the fill hose and a tee to a vent at the foot of the rail; both stages drain into the one line.
    [Fact]
    public void Two_vessels_that_drain_through_one_vent_take_longer_than_each_alone()
    {
        VesselNode Wet(string name) => new(name, PadSamples.Booster) { WaterFraction = 32.Percent(), Start = 40.BarGauge() };
        PadLink Line(string vessel) => new(vessel, "tee", [Hole(2)]) { FromPort = PortPosition.UnderWater };
        PadNetwork one = new() { Nodes = [Wet("vessel"), new JunctionNode("tee"), new OutsideNode()], Links = [Line("vessel"), new("tee",
            "outside", [Hole(1)])], Tolerance = 1e-9 };
        var both = one with { Nodes = [.. one.Nodes, Wet("other")], Links = [.. one.Links, Line("other")] };
        // Twice the water through the vent at 1/√(1/A² + 1/(4 A)²) for one, and half of that flow at 1/√(1/A² + 1/(8 A)²) for both.
        Tolerance.Relative(2 * Math.Sqrt((1 + 1.0 / 64) / (1 + 1.0 / 16)), DryAt(both.Fill(2.Minutes())) / DryAt(one.Fill(2.Minutes())),
            1e-5);
    }

    [Fact]
    public void Water_that_stands_in_a_line_to_a_tee_goes_on_and_closes()
    {
        PadNetwork pad = new()
        {
            Nodes = [new SupplyNode("supply", 40.BarGauge()), new JunctionNode("tee"), new VesselNode("vessel", PadSamples.Booster)
                { WaterFraction = 10.Percent() }, new VesselNode("other", PadSamples.Sustainer)],
            Links = [new("supply", "tee", [new CheckValvePart("check valve", PadSamples.Small, 0.Bar())])
                { WaterInLine = 100.Millilitres() },
                new("tee", "vessel", [Hole(2)]), new("tee", "other", [Hole(1)])],
        };
        var run = pad.Fill(1.Minutes());
        // Both are filled at the pressure of the tee and from the same one, in fourths of the area until the gauges part.
        Assert.InRange(1000 * run.Water("other").Values[^1], 10, 30);
        Tolerance.Relative(0.25 + 0.1, run.Water("vessel").Values[^1] + run.Water("other").Values[^1], 1e-9);
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.EnergyError, 0, 1e-6);
    }

    [Fact]
    public void Nothing_is_lost_in_any_tree()
    {
        var part = Gen.Select(Gen.Double[5, 40], Gen.Double[-20, 60].Select(p => p < 1 ? 0 : p), Gen.Double[0.5, 3],
            Gen.Bool);
        Gen.Select(part, part, part, Gen.Double[5, 42], Gen.Bool, Gen.Bool).Sample(
            (a, b, c, supply, second, vent) =>
            {
                (double Bar, double Percent, double Hole, bool Under)[] parts = [a, b, c];
                var vessels = parts.Select((p, i) => new VesselNode($"vessel {i}", i == 2 ? PadSamples.Sustainer : PadSamples.Booster)
                {
                    WaterFraction = p.Percent.Percent(), Start = p.Bar.BarGauge(), Heat = i == 1 ? FillHeat.Wall : FillHeat.Adiabatic,
                    Wall = i == 1 && p.Percent > 0 ? FillWall.Of(PadSamples.Booster, p.Percent.Percent()) with
                        { WaterSurface = Area.FromSquareMillimeters(3000) } : null, Standing = i == 0,
                });
                PadNetwork pad = new()
                {
                    Nodes = [.. vessels, new JunctionNode("tee"), new JunctionNode("next"), new SupplyNode("supply", supply.BarGauge()),
                        new OutsideNode()],
                    Links = [.. parts.Select((p, i) => p.Under && i != 1 ? new PadLink($"vessel {i}", i == 2 && second ? "next" : "tee",
                            [Hole(p.Hole)]) { FromPort = PortPosition.UnderWater }
                            : new PadLink(i == 2 && second ? "next" : "tee", $"vessel {i}", [Hole(p.Hole)])
                            { ToPort = p.Under ? PortPosition.UnderWater : PortPosition.AboveWater }),
                        new("tee", "next", [Hole(2)]),
                        new("supply", "tee", [new CheckValvePart("check valve", PadSamples.Small, 0.2.Bar())]),
                        new("next", "outside", [new ValvePart("vent", new Orifice(1.5.Millimetres(), 0.8)) { Openings = [new(1.Seconds(),
                            vent ? 60.Seconds() : 2.Seconds())] }])],
                };
                var run = pad.Fill(30.Seconds());
                Assert.True(run.Status == ResultStatus.Completed || run.Findings.Any(f => f.Message.Contains("passes its rated pressure",
                    StringComparison.Ordinal)), string.Join(" ", run.Findings.Select(f => f.Message)));
                Assert.True(run.WaterError < 1e-9 && run.MassError < 1e-6 && run.EnergyError < 1e-6,
                    $"water {run.WaterError}, mass {run.MassError}, energy {run.EnergyError}");
            },
            iter: 40);
    }

    // A vent that was open for a second leaves a junction at a dead end; what passed it then passes no more.
    [Fact]
    public void No_gas_is_lost_where_a_valve_beyond_a_second_junction_shuts()
    {
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("high", PadSamples.Booster) { Start = 34.BarGauge() }, new VesselNode("low", PadSamples.Sustainer)
                { Start = 7.BarGauge() }, new JunctionNode("tee"), new JunctionNode("next"), new OutsideNode()],
            Links = [new("tee", "high", [Hole(2)]), new("low", "tee", [Hole(1)]), new("tee", "next", [Hole(2)]),
                new("next", "outside", [new ValvePart("vent", new Orifice(1.5.Millimetres(), 0.8)) { Openings = [new(1.Seconds(),
                    2.Seconds())] }])],
        };
        var run = pad.Fill(30.Seconds());
        Assert.InRange(run.MassError, 0, 1e-9);
        Assert.InRange(run.EnergyError, 0, 1e-8);
        Tolerance.Absolute(run.End("high").Bar, run.End("low").Bar, 1e-3);
    }

    // A dry vessel beyond a tee gets water out of a port under it; of one above the water it gets none.
    [Theory]
    [InlineData(PortPosition.UnderWater, true)]
    [InlineData(PortPosition.AboveWater, false)]
    public void Where_the_port_lies_is_asked_of_every_vessel_that_water_can_come_to(PortPosition port, bool isAsked)
    {
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("wet", new(3.Litres(), 90.Millimetres(), 45.BarGauge())) { WaterFraction = 30.Percent(),
                Start = 40.BarGauge() }, new VesselNode("dry", new(3.Litres(), 90.Millimetres(), 45.BarGauge())), new JunctionNode("tee")],
            Links = [new("wet", "tee", [Hole(4)]) { FromPort = port }, new("tee", "dry", [Hole(4)])],
        };
        Assert.Equal(isAsked, pad.Validate().Any(f => f.Message.Contains("lies in dry isn't given", StringComparison.Ordinal)));
    }

    [Fact]
    public void Water_that_would_run_into_a_cylinder_is_refused()
    {
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("wet", new(3.Litres(), 90.Millimetres(), 45.BarGauge())) { WaterFraction = 30.Percent(),
                Start = 40.BarGauge() }, new SupplyNode("supply", 10.BarGauge())],
            Links = [new("wet", "supply", [Hole(4)]) { FromPort = PortPosition.UnderWater }],
        };
        Assert.Contains(pad.Validate(), f => f.Severity == FindingSeverity.Error && f.Message.Contains("which can't hold it",
            StringComparison.Ordinal));
    }
}
