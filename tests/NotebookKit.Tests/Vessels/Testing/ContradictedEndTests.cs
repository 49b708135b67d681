using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Testing;

public class ContradictedEndTests
{
    private static readonly PressureVessel Vessel = Samples.ShortChamber;

    private static readonly PartMargin WeakestEnd = Vessel.Burst().Parts.Skip(1).MinBy(p => p.Burst.Pascals)!;

    private static VesselEvidence EndAt(double bar, PressureVessel? twin = null)
        => VesselEvidence.Of(new BurstTest(twin ?? Vessel, "twin 1", bar.BarGauge(), WeakestEnd.Name));

    private static Finding Refusal(Rating rating)
    {
        Assert.False(rating.IsRated);
        return rating.Findings.First(f => f.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void An_end_that_let_go_low_rates_the_vessel_by_what_the_end_then_is_believed_to_hold()
    {
        var (before, after) = (Vessel.Rate(), Vessel.Rate(evidence: EndAt(20)));
        Assert.True(after.IsRated);
        Assert.Equal(WeakestEnd.Name, after.LimitedBy);
        Assert.Equal(WeakestEnd.Name, after.Moves[0].Part);
        Assert.True(after.Moves[0].After < after.Moves[0].Before);
        Assert.True(after.WorkingPressure < before.WorkingPressure);
        Assert.True(after.DesignBurst < 20.BarGauge());
        Assert.Contains(after.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("the model of the ends is contradicted", StringComparison.Ordinal)
            && f.Message.Contains(WeakestEnd.Burst.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public void No_rating_proves_the_next_vessel_at_what_has_burst_its_like()
    {
        // Three that held far more and one that let go early: the rating may rise, its proof never to where the one let go.
        var twins = Samples.Twins(Vessel, 4).Tests;
        var early = new BurstTest(Vessel, "early", 12.BarGauge(), WeakestEnd.Name);
        var rating = Vessel.Rate(evidence: new VesselEvidence([.. twins, early]));
        Assert.True(!rating.IsRated || rating.ProofPressure < 12.BarGauge());
        var asked = Vessel.Rate(wanted: 9.BarGauge(), evidence: VesselEvidence.Of([.. twins, early]));
        Assert.False(asked.IsRated);
        Assert.Contains(asked.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("nothing is proved at what has burst its like", StringComparison.Ordinal));
    }

    [Fact]
    public void What_contradicts_the_ends_is_said_where_the_tests_are_learned_from() =>
        Assert.Contains(EndAt(20).Learn(Vessel).Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("the model of the ends is contradicted", StringComparison.Ordinal));

    [Fact]
    public void A_short_twin_with_the_same_ends_counts_and_another_figure_in_the_model_changes_nothing()
    {
        var own = Vessel.Rate(evidence: EndAt(20));
        var stub = Vessel with { Name = "stub", Length = 80.Millimetres() };
        Assert.Equal(own.Learning.Parts[^1].BBasis, Vessel.Rate(evidence: EndAt(20, stub)).Learning.Parts[^1].BBasis);
        // Were the twin's end predicted by a share of its own, the test would show five times the strength.
        PressureVessel With(double percent) => Vessel with
        {
            NozzleEnd = Vessel.NozzleEnd with
            {
                Joints = [(CarriedSleeve)Vessel.NozzleEnd.Joints[0] with { Delivers = percent.Percent() }],
            },
            Fabrication = Vessel.Fabrication with { EfficiencyLow = 20.Percent(), Efficiency = 25.Percent() },
        };
        Assert.Equal(own.DesignBurst, Vessel.Rate(evidence: EndAt(20, With(30))).DesignBurst);
    }

    [Fact]
    public void Other_ends_are_warned_of_and_teach_nothing_of_these()
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
        Assert.All(rating.Learning.Parts.Skip(1), p => Assert.Equal(0, p.Bursts + p.Held));
    }

    [Fact]
    public void An_end_that_held_what_was_predicted_is_not_called_out()
    {
        Assert.DoesNotContain(Vessel.Rate(evidence: EndAt(WeakestEnd.Burst.Bar)).Findings,
            f => f.Message.Contains("contradicted", StringComparison.Ordinal));
        Assert.Contains(Vessel.Rate(evidence: EndAt(WeakestEnd.Burst.Bar - 0.1)).Findings,
            f => f.Message.Contains("contradicted", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wall_burst_below_its_low_end_warns_and_lowers_the_wall()
    {
        var poor = (Vessel with { Fabrication = Vessel.Fabrication
            with { Efficiency = Vessel.Fabrication.EfficiencyLow } }).Burst().WallLow;
        var rating = Vessel.Rate(evidence: VesselEvidence.Of(new BurstTest(Vessel, "A", poor * 0.4, "wall")));
        Assert.Contains(rating.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("below the low end of its prediction", StringComparison.Ordinal));
        Assert.True(rating.Moves[0].Part == "wall" && rating.Moves[0].Change < 0);
    }

    [Fact]
    public void A_test_above_all_that_was_predicted_warns_and_one_far_above_is_refused()
    {
        var high = (Vessel with { Fabrication = Vessel.Fabrication with { Efficiency = Vessel.Fabrication.EfficiencyHigh } }).Burst();
        var all = high.Parts.Max(p => p.Burst.Bar);
        VesselTest[] At(double bar) => [new BurstTest(Vessel, "A", bar.BarGauge(), "wall"),
            new BurstTest(Vessel, "A", bar.BarGauge(), WeakestEnd.Name), new HeldProof(Vessel, "A", bar.BarGauge())];
        foreach (var test in At(1.2 * all))
            Assert.Contains(Vessel.Rate(evidence: VesselEvidence.Of(test)).Findings,
                f => f.Severity == FindingSeverity.Warning && f.Message.Contains("above all that was predicted of it",
                StringComparison.Ordinal));
        foreach (var test in At(2.05 * all))
            Assert.Contains("was psi read as bar?", Refusal(Vessel.Rate(evidence: VesselEvidence.Of(test))).Message,
                StringComparison.Ordinal);
    }

    [Fact]
    public void A_test_of_another_layup_is_refused_with_both_layups()
    {
        var other = Vessel with { Name = "other", Plies = [Vessel.Plies[0], Vessel.Plies[0], Vessel.Plies[1]] };
        var message = Refusal(Vessel.Rate(evidence: Samples.Twins(other, 1))).Message;
        Assert.Contains("carbon sleeve 50 mm light + carbon sleeve 50 mm light + glass veil 30 g", message, StringComparison.Ordinal);
        Assert.Contains("short chamber (carbon sleeve 50 mm light + glass veil 30 g", message, StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => Samples.Twins(other, 1).LearnParts(Vessel));
    }

    [Fact]
    public void A_burst_whose_part_is_not_given_is_refused_with_the_parts_to_choose_from()
    {
        var silent = VesselEvidence.Of(new BurstTest(Vessel, "A", 60.BarGauge()));
        var error = Assert.Throws<InvalidDesignException>(() => Vessel.Rate(evidence: silent));
        Assert.Contains("the part that gave way isn't given", error.Message, StringComparison.Ordinal);
        Assert.All(Vessel.Burst().Parts, p => Assert.Contains(p.Name, error.Message, StringComparison.Ordinal));
        Assert.Throws<InvalidDesignException>(() => silent.Learn(Vessel));
        Assert.Contains("isn't one of its parts", Assert.Throws<InvalidDesignException>(() => Vessel.Rate(
            evidence: VesselEvidence.Of(new BurstTest(Vessel, "A", 60.BarGauge(), "nozzle")))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leak_is_no_burst_and_is_said_where_it_is_below_the_proof()
    {
        var held = new HeldProof(Vessel, "A", 40.BarGauge());
        var leaked = held with { Leak = new LeakSeen("nozzle end, seal", 5.BarGauge()) { DropsPerMinute = 12 }, DropsSeen = true };
        var (dry, wet) = (Vessel.Rate(evidence: VesselEvidence.Of(held)), Vessel.Rate(evidence: VesselEvidence.Of(leaked)));
        Assert.Equal(dry.WorkingPressure, wet.WorkingPressure);
        Assert.Contains(wet.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("leaked at the nozzle end, seal from 5", StringComparison.Ordinal)
            && f.Message.Contains("12 drops a minute", StringComparison.Ordinal));
        foreach (var wrong in new VesselTest[] { leaked with { DropsSeen = false }, leaked with { Growth = Volume.FromLiters(20) },
            leaked with { Leak = new LeakSeen("seal", 41.BarGauge()) }, leaked with { Leak = new LeakSeen(" ", 5.BarGauge()) },
            leaked with { Leak = new LeakSeen("seal", 5.BarGauge()) { DropsPerMinute = -1 } } })
            Assert.Throws<InvalidDesignException>(() => Vessel.Rate(evidence: VesselEvidence.Of(wrong)));
    }

    [Fact]
    public void Tests_that_are_refused_elsewhere_are_refused_here() =>
        Assert.Throws<InvalidDesignException>(() => Vessel.Rate(evidence: EndAt(1400)));

    // A tied-off tail or a deeper dome that held says nothing of an end without it.
    [Fact]
    public void Another_tail_or_depth_is_another_end()
    {
        var vessel = Samples.Trainer;
        var tail = new CarriedSleeve { Neck = 54.Millimetres(), Tail = 80.Millimetres(), IsTiedOff = true };
        var tied = vessel with { NozzleEnd = vessel.NozzleEnd with { Joints = [tail] } };
        var dome = (DomedClosure)vessel.ForwardEnd.Closure;
        var deeper = vessel with { ForwardEnd = vessel.ForwardEnd with { Closure = dome with { Depth = dome.Depth * 1.5 } } };
        Assert.True(EvidenceCheck.SharesEnd(vessel, vessel with { Name = "twin" }, v => v.NozzleEnd));
        Assert.True(EvidenceCheck.SharesEnd(vessel, vessel with { Name = "twin" }, v => v.ForwardEnd));
        Assert.False(EvidenceCheck.SharesEnd(vessel, tied, v => v.NozzleEnd));
        Assert.False(EvidenceCheck.SharesEnd(vessel, deeper, v => v.ForwardEnd));
        // Another hole is another end, but sleeve and tail don't know of it.
        var wider = vessel with { NozzleEnd = vessel.NozzleEnd with { Closure = vessel.NozzleEnd.Closure with
            { Opening = vessel.NozzleEnd.Closure.Opening + 2.Millimetres() } } };
        Assert.False(EvidenceCheck.SharesEnd(vessel, wider, v => v.NozzleEnd));
        Assert.True(EvidenceCheck.SharesHold(vessel, wider, v => v.NozzleEnd));
        Assert.False(EvidenceCheck.SharesHold(vessel, tied, v => v.NozzleEnd));
    }
}
