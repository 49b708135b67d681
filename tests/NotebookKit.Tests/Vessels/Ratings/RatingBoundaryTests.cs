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
        // 300 bar are the working pressure: 315 with 5 % over it, and 346.5 as a proof of 1.1 times.
        var over = thick.Rate(rules with { Overshoot = 1.05 }, evidence: tests);
        Tolerance.Absolute(315, (over.RequiredBurst / 1.2).Bar, 1e-9);
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

    // 15 bar wanted: 5 % over it is 15.75, half as much again 23.625, three times 47.25.
    [Fact]
    public void A_pressure_that_is_asked_for_is_rated_with_its_overshoot_proof_and_burst()
    {
        var rating = Strong.Rate(wanted: 15.BarGauge(), evidence: Samples.Twins(Strong));
        Tolerance.Relative(15, rating.WorkingPressure.Bar, 1e-12);
        Tolerance.Relative(15.75, rating.MaximumExpectedPressure.Bar, 1e-12);
        Tolerance.Relative(23.625, rating.ProofPressure.Bar, 1e-12);
        Tolerance.Relative(47.25, rating.RequiredBurst.Bar, 1e-12);
    }

    [Theory]
    [InlineData(0.999, true)]
    [InlineData(1.001, false)]
    public void A_thousandth_more_than_is_allowed_is_refused(double share, bool isRated)
    {
        var twins = Samples.Twins(Strong);
        var allowed = Strong.Rate(evidence: twins).WorkingPressure;
        Assert.Equal(isRated, Strong.Rate(wanted: allowed * share, evidence: twins).IsRated);
    }

    // Ten bar are the highest that may ever be seen, so 10/1.05 may be asked for.
    [Fact]
    public void What_a_rule_allows_is_said_with_and_without_its_overshoot()
    {
        var message = string.Join("\n", Strong.Rate(RuleSets.ContactMoulded, 12.BarGauge(), Samples.Twins(Strong)).Findings
            .Select(f => f.Message));
        Assert.Contains($"allows up to {(10 / 1.05).BarGauge()} on a design burst", message, StringComparison.Ordinal);
        Assert.Contains("it was written for no more than 10 bar gauge,", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.95, 1.05, false)]
    [InlineData(1, 1.05, true)]
    [InlineData(1.5, 1.5, true)]
    [InlineData(1.5, 1.55, false)]
    public void A_rule_proves_to_the_expected_pressure_at_least_and_overshoots_by_half_at_most(double proof, double overshoot,
        bool isTaken) => Assert.Equal(isTaken, (RuleSets.Club with { Proof = proof, Overshoot = overshoot }).Validate().Count == 0);

    // The weakest of five twins gave way at 0.94 of the low end: a fill to just that is one failure, a hair less none.
    [Fact]
    public void A_twin_that_gave_way_at_the_fill_counts_as_a_failure()
    {
        var rating = Strong.Rate(evidence: Samples.Twins(Strong));
        var weakest = Strong.Burst().WallLow * 0.94;
        Assert.Equal(1, rating.RiskAt(weakest).Failures);
        Assert.Equal(0, rating.RiskAt(weakest * 0.9999).Failures);
    }
}
