using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Uncertainty;

/// <summary>Ways in which tests could flatter a vessel, each held to err low.</summary>
public class EvidenceSafetyTests
{
    private static readonly MaterialLibrary Stock = MaterialLibrary.Typical;
    private static readonly PressureVessel Vessel = Samples.Trainer;

    private static readonly VesselEnd Dome =
        new(DomedClosure.Ellipsoid(Stock.Solid("aluminium 6061-T6"), 2.Millimetres(), 66.Millimetres()), Samples.Tied);

    private static readonly VesselEnd Plate = new(new FlatClosure(Stock.Solid("aluminium 6061-T6"), 12.Millimetres()), Samples.Tied);

    private static PartBelief PartOf(PressureVessel vessel, string name, params VesselTest[] tests) =>
        new VesselEvidence(tests).LearnParts(vessel).Parts.Single(p => p.Part.Name == name);

    // A dome let go at the forward end of a twin; the vessel in hand has that dome at its nozzle end, and another closure in front.
    [Fact]
    public void An_end_that_let_go_counts_for_the_same_design_at_the_other_end()
    {
        var tested = Vessel with { NozzleEnd = Plate, ForwardEnd = Dome };
        var inHand = Vessel with { NozzleEnd = Dome, ForwardEnd = Plate };
        var early = (tested.Burst().Parts.Single(p => p.Name == "forward end, domed closure").Burst.Bar * 0.4).BarGauge();
        var before = PartOf(inHand, "nozzle end, domed closure");
        var after = PartOf(inHand, "nozzle end, domed closure", new BurstTest(tested, "A", early, "forward end, domed closure"));
        Assert.Equal(1, after.Bursts);
        Assert.True(after.BBasis < before.BBasis, $"{before.BBasis} {after.BBasis}");
        Assert.Contains(new VesselEvidence([new BurstTest(tested, "A", early, "forward end, domed closure")]).LearnParts(inHand).Findings,
            f => f.Message.Contains("which is of the design of the nozzle end, domed closure here", StringComparison.Ordinal));
        // The plate let nothing go, and the plate in hand is none the wiser.
        Assert.Equal(0, PartOf(inHand, "forward end, plate collapse", new BurstTest(tested, "A", early,
            "forward end, domed closure")).Bursts);
    }

    [Fact]
    public void Two_ends_of_one_design_in_one_test_both_learn_of_the_one_that_let_go()
    {
        var twin = Vessel with { NozzleEnd = Dome, ForwardEnd = Dome };
        var early = (twin.Burst().Parts.Single(p => p.Name == "forward end, domed closure").Burst.Bar * 0.4).BarGauge();
        BurstTest test = new(twin, "A", early, "forward end, domed closure");
        Assert.Equal(PartOf(twin, "forward end, domed closure", test).BBasis, PartOf(twin, "nozzle end, domed closure", test).BBasis);
        Assert.True(PartOf(twin, "nozzle end, domed closure", test).BBasis < PartOf(twin, "nozzle end, domed closure",
            new HeldProof(twin, "A", early)).BBasis);
    }

    // A dome of another wall is another design: what let go there says nothing here.
    [Fact]
    public void An_end_of_another_design_teaches_nothing_whichever_end_it_closes()
    {
        var other = new VesselEnd(DomedClosure.Ellipsoid(Stock.Solid("aluminium 6061-T6"), 4.Millimetres(), 66.Millimetres()),
            Samples.Tied);
        var tested = Vessel with { NozzleEnd = Plate, ForwardEnd = other };
        var inHand = Vessel with { NozzleEnd = Dome, ForwardEnd = Plate };
        BurstTest test = new(tested, "A", 30.BarGauge(), "forward end, domed closure");
        Assert.Equal(0, PartOf(inHand, "nozzle end, domed closure", test).Bursts);
        Assert.Equal(PartOf(inHand, "nozzle end, domed closure").BBasis, PartOf(inHand, "nozzle end, domed closure", test).BBasis);
    }

    [Fact]
    public void What_the_gauge_may_have_read_too_high_is_taken_off_every_test()
    {
        var wall = Vessel.Burst().WallLow;
        PartBelief Learned(double read, Pressure? error) => PartOf(Vessel, BurstTest.Wall,
            new BurstTest(Vessel, "A", wall * read, BurstTest.Wall) { GaugeError = error },
            new HeldProof(Vessel, "B", wall * (0.8 * read)) { GaugeError = error });
        Tolerance.Relative(Learned(1, null).BBasis.Bar, Learned(1, 0.001.Bar()).BBasis.Bar, 1e-4);
        Assert.True(Learned(1, 3.Bar()).BBasis < Learned(1, null).BBasis);
        // By hand: what was read 3 bar too high is the test at 3 bar less.
        var (a, b) = (new BurstTest(Vessel, "A", wall + -3.Bar(), BurstTest.Wall), new BurstTest(Vessel, "A", wall, BurstTest.Wall)
        {
            GaugeError = 3.Bar(),
        });
        Tolerance.Relative(PartOf(Vessel, BurstTest.Wall, a).BBasis.Bar, PartOf(Vessel, BurstTest.Wall, b).BBasis.Bar, 1e-12);
    }

    // Read at 60 bar by a gauge that is 3 bar high, a wall that burst at 57 bar isn't proved at 58.
    [Fact]
    public void No_vessel_is_proved_where_its_like_burst_by_a_gauge_that_reads_high()
    {
        BurstTest read = new(Vessel, "A", 60.BarGauge(), BurstTest.Wall);
        Assert.Empty(EvidenceCheck.FindProof(Vessel, [read], 58.BarGauge()));
        Assert.Single(EvidenceCheck.FindProof(Vessel, [read with { GaugeError = 3.Bar() }], 58.BarGauge()));
    }

    [Theory]
    [InlineData(0.0009, false)]
    [InlineData(0.001, true)]
    [InlineData(20, true)]
    [InlineData(20.1, false)]
    public void A_gauge_is_off_by_a_thousandth_of_a_bar_to_twenty(double bar, bool isTaken) =>
        Assert.Equal(isTaken, VesselEvidence.Of(new HeldProof(Vessel, "A", 60.BarGauge())
        {
            GaugeError = bar.Bar(),
        }).Validate().Count == 0);

    [Theory]
    [InlineData(15, true)]
    [InlineData(15.01, false)]
    public void And_by_no_more_than_half_of_what_was_read(double bar, bool isTaken)
    {
        var findings = VesselEvidence.Of(new HeldProof(Vessel, "A", 30.BarGauge()) { GaugeError = bar.Bar() }).Validate();
        Assert.Equal(isTaken, findings.Count == 0);
        if (!isTaken) Assert.Contains("no more than half of the 30 bar gauge read", Assert.Single(findings).Message,
            StringComparison.Ordinal);
    }
}
