using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Uncertainty;

namespace NotebookKit.Tests.Vessels.Testing;

public class ContradictedEndTests
{
    private static readonly PressureVessel Vessel = Samples.ShortChamber;

    private static readonly PartMargin WeakestEnd = Vessel.Burst().Parts.Skip(1).MinBy(p => p.Burst.Pascals)!;

    private static VesselEvidence EndAt(double bar, PressureVessel? twin = null)
        => VesselEvidence.Of(new BurstTest(twin ?? Vessel, "twin 1", bar.BarGauge(), WallBurst: false));

    [Fact]
    public void An_end_that_let_go_below_its_prediction_forbids_every_rating_of_the_design()
    {
        Assert.True(Vessel.Rate().IsRated);
        var evidence = EndAt(20);
        Rating[] ratings = [Vessel.Rate(evidence: evidence), Vessel.SampleBursts(400).Rate(evidence: evidence),
            Vessel.SampleBursts(400, belief: evidence.Learn(Vessel).Posterior).Rate()];
        foreach (var rating in ratings)
        {
            Assert.False(rating.IsRated);
            var error = rating.Findings.First(f => f.Severity == FindingSeverity.Error).Message;
            Assert.All(["twin 1", "20.0 bar", WeakestEnd.Burst.ToString(),
                "no rating of short chamber stands until that end is redesigned or its model takes the test in"],
                part => Assert.Contains(part.Replace("20.0 bar", 20.BarGauge().ToString(), StringComparison.Ordinal), error,
                    StringComparison.Ordinal));
            Assert.Throws<InvalidDesignException>(() => rating.WorkingPressure);
        }
    }

    [Fact]
    public void What_contradicts_the_ends_is_said_where_the_tests_are_learned_from() =>
        Assert.Contains(EndAt(20).Learn(Vessel).Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("the model of the ends is contradicted", StringComparison.Ordinal));

    [Fact]
    public void A_belief_keeps_its_tests_through_later_learning()
    {
        var later = VesselEvidence.Of(new HeldProof(Vessel, "no. 2", 30.BarGauge())).Learn(Vessel, EndAt(20).Learn(Vessel).Posterior);
        Assert.False(Vessel.SampleBursts(400, belief: later.Posterior).Rate().IsRated);
    }

    [Fact]
    public void A_short_twin_with_the_same_ends_forbids_as_well_and_another_figure_in_the_model_is_no_other_end()
    {
        Assert.False(Vessel.Rate(evidence: EndAt(20, Vessel with { Name = "stub", Length = 80.Millimetres() })).IsRated);
        var weaker = Vessel.NozzleEnd with { Joints = [new CarriedSleeve { Delivers = 80.Percent() }] };
        Assert.False((Vessel with { NozzleEnd = weaker, ForwardEnd = Vessel.ForwardEnd
            with { Joints = weaker.Joints } }).Rate(evidence: EndAt(20)).IsRated);
    }

    [Fact]
    public void Other_ends_are_warned_of_alone()
    {
        var other = Vessel with
        {
            NozzleEnd = Vessel.NozzleEnd with { Closure = Vessel.NozzleEnd.Closure with { Wall = 15.Millimetres() } },
            ForwardEnd = Vessel.ForwardEnd with { Closure = Vessel.ForwardEnd.Closure with { Wall = 4.Millimetres() } },
        };
        var rating = other.Rate(evidence: EndAt(20));
        Assert.True(rating.IsRated);
        Assert.Contains(rating.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("has other ends", StringComparison.Ordinal));
    }

    [Fact]
    public void An_end_that_held_what_was_predicted_forbids_nothing()
    {
        Assert.True(Vessel.Rate(evidence: EndAt(WeakestEnd.Burst.Bar)).IsRated);
        Assert.False(Vessel.Rate(evidence: EndAt(WeakestEnd.Burst.Bar - 0.1)).IsRated);
    }

    [Fact]
    public void Evidence_never_raises_a_rating_that_it_is_only_held_against()
    {
        var rating = Vessel.Rate(evidence: VesselEvidence.Of(new HeldProof(Vessel, "no. 2", Vessel.Rate().ProofPressure),
            new BurstTest(Vessel, "no. 3", Vessel.Burst().WallBurst)));
        Assert.Equal(Vessel.Rate().WorkingPressure, rating.WorkingPressure);
        Assert.Equal(Vessel.Rate().Findings.Count, rating.Findings.Count);
    }

    [Fact]
    public void A_wall_burst_below_its_low_end_warns_and_below_the_proof_forbids()
    {
        var poor = (Vessel with { Fabrication = Vessel.Fabrication
            with { Efficiency = Vessel.Fabrication.EfficiencyLow } }).Burst().WallLow;
        var proof = Vessel.Rate().ProofPressure;
        Assert.True(proof < poor);
        var between = Vessel.Rate(evidence: VesselEvidence.Of(new BurstTest(Vessel, "A", (0.5 * (poor.Bar + proof.Bar)).BarGauge())));
        Assert.True(between.IsRated);
        Assert.Contains(between.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("below the low end of its prediction", StringComparison.Ordinal));
        var below = Vessel.Rate(evidence: VesselEvidence.Of(new BurstTest(Vessel, "A", proof)));
        Assert.False(below.IsRated);
        Assert.Contains(below.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("nothing is proved at what has burst its like", StringComparison.Ordinal));
    }

    [Fact]
    public void A_test_above_all_that_was_predicted_warns()
    {
        foreach (VesselTest test in new VesselTest[] { new BurstTest(Vessel, "A", 900.BarGauge()),
            new BurstTest(Vessel, "A", 900.BarGauge(), WallBurst: false), new HeldProof(Vessel, "A", 900.BarGauge()) })
            Assert.Contains(Vessel.Rate(evidence: VesselEvidence.Of(test)).Findings,
                f => f.Severity == FindingSeverity.Warning && f.Message.Contains("above all that was predicted of it",
                StringComparison.Ordinal));
    }

    [Fact]
    public void Tests_that_are_refused_elsewhere_are_refused_here() =>
        Assert.Throws<InvalidDesignException>(() => Vessel.Rate(evidence: EndAt(1400)));
}
