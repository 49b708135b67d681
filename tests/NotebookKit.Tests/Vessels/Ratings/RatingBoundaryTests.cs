using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Ratings;

/// <summary>The figures that a rating ends at, tried on either side of them.</summary>
public class RatingBoundaryTests
{
    // Plates so thick that they yield past what the wall holds.
    private static readonly PressureVessel Strong = Samples.Trainer with
    {
        NozzleEnd = Samples.Trainer.NozzleEnd with { Closure = new FlatClosure(Samples.Stock.Solid("aluminium 6061-T6"),
            30.Millimetres()) { Opening = 10.Millimetres() } },
        ForwardEnd = Samples.Trainer.ForwardEnd with { Closure = new FlatClosure(Samples.Stock.Solid("aluminium 6061-T6"),
            30.Millimetres()) },
    };

    private static readonly VesselEnd Plate = new(new FlatClosure(Samples.Stock.Solid("aluminium 6061-T6"), 60.Millimetres()),
        Samples.Tied);

    // 1.5 times as a proof and two thirds as the most that a proof may take: 1.5 × 1.5 = 2.25.
    [Fact]
    public void A_rule_by_risk_ends_at_the_design_burst_over_two_and_a_quarter()
    {
        var twins = Samples.Twins(Strong);
        var learned = twins.LearnParts(Strong);
        var end = learned.BBasis / 2.25;
        var chance = learned.ChanceBelow(end);
        Assert.InRange(chance, 1e-6, 0.1);
        var looser = Strong.Rate(RuleSet.ByRisk(1.02 * chance), evidence: twins);
        Tolerance.Relative(end.Bar, looser.MaximumExpectedPressure.Bar, 1e-9);
        Assert.Contains(looser.Findings, f => f.Message.Contains("the design burst over 2.25", StringComparison.Ordinal));
        var tighter = Strong.Rate(RuleSet.ByRisk(0.98 * chance), evidence: twins);
        Assert.True(tighter.MaximumExpectedPressure < end && tighter.MaximumExpectedPressure > 0.99 * end);
        Assert.Contains(tighter.Findings, f => f.Message.Contains("the risk sets the maximum expected pressure", StringComparison.Ordinal));
        Tolerance.Relative(1.5 / 2.25, looser.ProofPressure / looser.DesignBurst, 1e-9);
    }

    [Theory]
    [InlineData(0.99e-6, false)]
    [InlineData(1e-6, true)]
    [InlineData(0.1, true)]
    [InlineData(0.101, false)]
    public void A_club_s_chance_goes_from_one_in_a_million_to_one_in_ten(double chance, bool isTaken)
    {
        if (isTaken) Assert.Empty(RuleSet.ByRisk(chance).Validate());
        else Assert.Throws<OutOfRangeException>(() => RuleSet.ByRisk(chance));
        Assert.Equal(isTaken, (RuleSets.Club with { TargetChance = chance }).Validate().Count == 0);
    }

    // Bursts near 1000 bar with a factor of 1.5 would rate a vessel above 300 bar; nothing here is filled or flown there.
    [Fact]
    public void No_vessel_is_rated_above_300_bar()
    {
        var sleeve = new BraidedSleeve(Samples.Stock.Braid("carbon sleeve 65 mm heavy"));
        var thick = Strong with { Plies = [.. Enumerable.Repeat<Ply>(sleeve, 8)], NozzleEnd = Plate, ForwardEnd = Plate };
        var tests = new VesselEvidence([.. Enumerable.Range(1, 8).Select(i => new BurstTest(thick, $"{i}",
            thick.Burst().WallLow * (0.97 + 0.01 * i), BurstTest.Wall))]);
        var rules = RuleSets.SpaceVessel with { MaximumProofUse = 95.Percent(), Proof = 1.1, Burst = 1.2, Overshoot = 1 };
        var rating = thick.Rate(rules, evidence: tests);
        Assert.True(rating.DesignBurst.Bar / 1.2 > 300, rating.DesignBurst.ToString());
        Tolerance.Absolute(300, (rating.MaximumExpectedPressure / rules.Overshoot).Bar, 1e-9);
        Assert.Contains(rating.Findings, f => f.Message.Contains("no vessel is rated above 300 bar gauge", StringComparison.Ordinal));
    }

    [Fact]
    public void A_leak_known_below_the_proof_is_said_and_above_it_not()
    {
        var working = Strong.Rate(evidence: Samples.Twins(Strong));
        var proof = working.ProofPressure.Bar;
        Assert.DoesNotContain(Sealed(proof + 0.1).Findings, IsLeak);
        Assert.Contains(Sealed(proof - 0.1).Findings, f => IsLeak(f) && f.Severity == FindingSeverity.Warning
            && !f.Message.Contains("below the working pressure", StringComparison.Ordinal));
        Assert.Contains(Sealed(working.WorkingPressure.Bar - 0.1).Findings, f => IsLeak(f)
            && f.Message.Contains("below the working pressure", StringComparison.Ordinal));

        static bool IsLeak(Finding f) => f.Message.Contains("is known to leak from", StringComparison.Ordinal);

        static Rating Sealed(double bar)
        {
            var seal = new Seal(SealKind.ORing) { HoldsTo = bar.BarGauge() };
            var vessel = Strong with { ForwardEnd = Strong.ForwardEnd with { Seal = seal } };
            return vessel.Rate(evidence: Samples.Twins(vessel));
        }
    }
}
