using NotebookKit.Filling.Networks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Networks;

public partial class PadNetworkTests
{
    // The hose sees the 44 bar of the regulator: rated to that it holds, rated to less it doesn't, and is named.
    [Theory]
    [InlineData(44.0, NetworkVerdict.WithinRatings)]
    [InlineData(43.9, NetworkVerdict.PassesRating)]
    public void A_part_is_passed_below_what_may_stand_in_it(double rated, NetworkVerdict verdict)
    {
        var pad = PadSamples.TwoStages;
        var run = (pad with { Links = [pad.Links[0] with { Parts = [pad.Links[0].Parts[0], pad.Links[0].Parts[1] with { RatedTo =
            rated.BarGauge() }, .. pad.Links[0].Parts.Skip(2)] }, pad.Links[1]] }).Fill(2.Seconds());
        Assert.Equal(verdict, run.Verdict);
        Assert.Equal(verdict == NetworkVerdict.PassesRating, run.Findings.Any(f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("is rated to 43.9 bar gauge, but 44 bar gauge may stand", StringComparison.Ordinal)));
    }

    // Set 42 bar at 200 bar of inlet, 1 % of what the inlet falls by: 44 bar at the end of the cylinder, and 3 bar of creep.
    [Theory]
    [InlineData(50.0, 47)]
    [InlineData(45.5, 45.5)]
    [InlineData(null, 47)]
    public void A_regulator_locks_up_at_creep_or_where_it_relieves(double? relieves, double most)
    {
        RegulatorPart regulator = new("regulator", 42.BarGauge())
        {
            SupplyEffect = 0.01, SetAtInlet = 200.BarGauge(), Creep = 3.Bar(), RelievesAt = relieves?.BarGauge(), Droop = 2.Bar(),
            DroopFlow = MassFlow.FromGramsPerSecond(5),
        };
        Tolerance.Relative(most, regulator.Most.Bar, 1e-9);
        Tolerance.Relative(42, regulator.OutletAt(100.BarGauge(), MassFlow.FromGramsPerSecond(2.5)).Bar, 1e-9);
        Tolerance.Relative(30, regulator.OutletAt(30.BarGauge(), MassFlow.Zero).Bar, 1e-9);
    }

    // 50 bar in the sustainer: a check valve keeps them from what lies before it and not from itself; without one they stand everywhere.
    [Theory]
    [InlineData(true, 44, 50, 50)]
    [InlineData(false, 50, 50, 50)]
    public void What_stands_behind_a_part_reaches_back_to_the_check_valve(bool isHeld, double before, double at, double after)
    {
        var pad = PadSamples.TwoStages;
        LinePart hose = new HosePart("line", new Hose(4.Millimetres(), 1.Metres())), last = new PassagePart("last", PadSamples.Coupling),
            middle = isHeld ? new CheckValvePart("middle", PadSamples.Coupling, 0.3.Bar()) : new PassagePart("middle", PadSamples.Coupling);
        var ratings = NetworkRatings.Of(pad with
        {
            Nodes = [pad.Nodes[0], pad.Nodes[1], (VesselNode)pad.Nodes[2] with { Start = 50.BarGauge() }],
            Links = [pad.Links[0], new("booster", "sustainer", [hose, middle, last])],
        }, _ => GaugePressure.Zero);
        double Of(string name) => ratings.Single(r => r.Name.StartsWith(name, StringComparison.Ordinal)).MayStand.Bar;
        Assert.Equal((before, at, after), (Math.Round(Of("line"), 9), Math.Round(Of("middle"), 9), Math.Round(Of("last"), 9)));
        Tolerance.Relative(before, Of("booster"), 1e-9);
        // The regulator lets nothing back: what stands in front of it is the cylinder's.
        Tolerance.Relative(200, Of("regulator"), 1e-9);
    }

    [Theory]
    [InlineData(41, true)]
    [InlineData(43, false)]
    public void A_cylinder_below_the_regulator_is_said(double bar, bool isSaid)
    {
        var pad = PadSamples.TwoStages;
        Assert.Equal(isSaid, NetworkChecks.Of(pad with { Nodes = [new CylinderNode(new("cylinder", 10.Litres(), bar.BarGauge())),
            .. pad.Nodes.Skip(1)] }).Any(f => f.Message.Contains("below the 42 bar gauge that the regulator is set to",
            StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(-1, true)]
    [InlineData(1, false)]
    public void Water_below_freezing_is_said(double celsius, bool isSaid) => Assert.Equal(isSaid,
        NetworkChecks.Of(PadSamples.TwoStages with { Temperature = celsius.Celsius() }).Any(f => f.Message.Contains("freez",
            StringComparison.OrdinalIgnoreCase)));

    // 2 mm of bore, 3.1416 mm²: 20 N at (20 N/3.1416 mm² + 1.01325 bar)/1.267876 = 51.0108 bar, 49.998 bar gauge (choked air, γ 1.4).
    [Theory]
    [InlineData(49.5, false)]
    [InlineData(50.5, true)]
    public void A_hose_is_said_to_whip_from_twenty_newtons_on(double bar, bool whips) => Assert.Equal(whips,
        new HosePart("hose", new Hose(2.Millimetres(), 1.Metres())).Whip(bar.BarGauge(), AbsolutePressure.StandardSeaLevel)
            .Findings.Count > 0);
}
