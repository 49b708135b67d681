using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Allowables;
using UnitsNet;

namespace NotebookKit.Tests.Life;

public class LifeTests
{
    private static readonly Source Printed = new("test author", "test paper", 2001);

    private static readonly StressRuptureParameters Published = StressRuptureParameters.LikeAramid with { Source = Printed };

    private static readonly ProofEffect Effect = new(new(180.BarGauge(), 0.12, 120.BarGauge(), 80.BarGauge()), 10.Minutes(), 100,
        15.Minutes())
    {
        Kept = 90.Percent(),
        Rupture = StressRuptureParameters.LikeAramid,
        Slope = new FatigueSlope(12, Source.CommonPractice("slope")),
    };

    [Fact]
    public void Longer_or_harder_loads_never_make_a_vessel_more_reliable() =>
        Gen.Select(Gen.Double[0.2, 0.9], Gen.Double[0.1, 1e4], Gen.Double[1.001, 1.1]).Sample((stress, hours, factor) =>
        {
            var law = new StressRupture(Published);
            double At(double s, double h) => law.FailureChance([new((100 * s).Percent(), h.Hours())]);
            Assert.True(At(stress * factor, hours) >= At(stress, hours));
            Assert.True(At(stress, hours * factor) >= At(stress, hours));
            Tolerance.Relative(At(stress, hours), law.FailureChance([new(Ratio.FromDecimalFractions(stress),
                Duration.FromMinutes(60 * hours))]), 1e-9);
        });

    [Fact]
    public void The_time_at_a_reliability_has_that_reliability() =>
        Tolerance.Absolute(0.999, new StressRupture(Published).Reliability([new(50.Percent(),
            new StressRupture(Published).TimeTo(50.Percent(), 0.999))]), 1e-12);

    private static readonly Duration TwentyHours = 20.Hours();

    [Fact]
    public void Unpublished_parameters_warn_and_shorten_but_never_lengthen()
    {
        var recalled = new StressRupture(StressRuptureParameters.LikeAramid);
        var longer = recalled.Life(50.Percent(), 0.999, TwentyHours);
        Assert.Equal(TwentyHours.Hours, longer.Life.Hours, 9);
        Assert.Equal(2, longer.Findings.Count(f => f.Severity == FindingSeverity.Warning));
        var shorter = recalled.Life(80.Percent(), 0.999, TwentyHours);
        Assert.Equal(shorter.ByFormula.Hours, shorter.Life.Hours, 12);
        Assert.True(shorter.Life < TwentyHours);
        Assert.Equal(1, recalled.Equivalent(1.Hours(), 40.Percent(), 50.Percent()).Hours, 12);
        var printed = new StressRupture(Published);
        Assert.True(printed.Life(50.Percent(), 0.999, TwentyHours).Life > TwentyHours);
        Assert.True(printed.Equivalent(1.Hours(), 40.Percent(), 50.Percent()).Hours < 1);
        Assert.DoesNotContain(printed.Life(50.Percent(), 0.999, TwentyHours).Findings, f => f.Severity == FindingSeverity.Warning);
    }

    [Theory]
    [InlineData(SourceKind.Unverified)]
    [InlineData(SourceKind.CommonPractice)]
    [InlineData(SourceKind.Typical)]
    [InlineData(SourceKind.Independent)]
    [InlineData(SourceKind.DataSheet)]
    [InlineData(SourceKind.Measured)]
    public void Only_a_publication_that_can_be_looked_up_counts_as_published(SourceKind kind)
    {
        Assert.True(Published.IsPublished);
        Assert.False((Published with { Source = Printed with { Kind = kind } }).IsPublished);
        Assert.False((Published with { Source = Printed with { Year = null } }).IsPublished);
        Assert.False((Published with { Source = Printed with { Author = "" } }).IsPublished);
        Assert.Contains("carbon", StressRuptureParameters.NoDataForCarbon.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lighter_load_counts_less_than_a_fill_only_with_a_published_slope()
    {
        Assert.Equal(1, new FatigueSlope(12, Source.CommonPractice("slope")).FillsFor(0.5));
        Tolerance.Relative(Math.Pow(0.5, 12), new FatigueSlope(12, Printed).FillsFor(0.5), 1e-12);
    }

    [Fact]
    public void Cycles_add_up_and_exact_whole_numbers_are_not_rounded_down()
    {
        Assert.Equal(10, new CumulativeDamage([new("fills", 1, 10)]).Sum().WholeBlocks);
        Assert.Equal(7, new CumulativeDamage([new("fills", 3, 10)]).Sum().WholeCyclesLeft(10));
        Assert.True(new CumulativeDamage([new("fills", 10, 10)]).Sum().IsOver);
        Assert.Null(new CumulativeDamage([new("fills", 0, 10)]).Sum().WholeBlocks);
        Assert.Contains("at least one kind", Assert.Throws<InvalidDesignException>(() => new CumulativeDamage([]).Sum()).Message,
            StringComparison.Ordinal);
        Assert.Contains("number of fills to failure is 0", Assert.Throws<InvalidDesignException>(() => new CumulativeDamage([new("fills",
            1, 0)]).Sum()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_proof_helps_less_the_more_strength_is_lost_and_never_hurts_in_the_strength_model() =>
        Gen.Select(Gen.Double[0.05, 0.3], Gen.Double[0.2, 1], Gen.Double[1, 1.6]).Sample((spread, kept, factor) =>
        {
            var screening = new ScreeningByProof(180.BarGauge(), spread, (80 * factor).BarGauge(), 80.BarGauge());
            var left = (100 * kept).Percent();
            double after = screening.AfterProof(left), without = screening.WithoutProof(left);
            Assert.InRange(after, 0, without);
            Assert.True(screening.AfterProof((100 * (kept * 0.9)).Percent()) >= after);
            if (kept * factor >= 1 + 1e-9) Assert.Equal(0, after);
        });

    [Fact]
    public void Chance_and_kept_strength_undo_each_other_and_bar_and_psi_agree()
    {
        var bar = Effect.Screening;
        Tolerance.Relative(1e-4, bar.AfterProof(bar.KeptWhereChanceIs(1e-4)), 1e-9);
        const double psi = 14.503773773;
        var inPsi = new ScreeningByProof((180 * psi).PsiGauge(), 0.12, (120 * psi).PsiGauge(), (80 * psi).PsiGauge());
        Tolerance.Relative(bar.AfterProof(55.Percent()), inPsi.AfterProof(55.Percent()), 1e-9);
        Assert.Contains("Raise the proof pressure or lower the fill", Assert.Throws<InvalidDesignException>(() => (bar
            with { Fill = 130.BarGauge() }).BurstInProof()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_truths_about_a_proof_are_said_with_numbers()
    {
        var result = Effect.Evaluate();
        Assert.Equal(0, result.ChanceAfterProof);
        Assert.True(result.ChanceWithoutProof > 0);
        Assert.True(result.ReliabilityGivenProof < result.ReliabilityWithoutProof);
        Tolerance.Relative(129.746338, result.FillsUsed!.Value, 1e-8);
        Tolerance.Relative(2805.68537, result.TimeUsed!.Value.Hours, 1e-8);
        Assert.Contains("66.7 %", result.Screens, StringComparison.Ordinal);
        Assert.Contains("130 fills", result.Ages, StringComparison.Ordinal);
        Assert.EndsWith(".", result.Screens, StringComparison.Ordinal);
        Assert.EndsWith(".", result.Ages, StringComparison.Ordinal);
        Assert.Equal(2, result.Findings.Count(f => f.Severity == FindingSeverity.Warning));
    }

    [Fact]
    public void What_is_not_given_about_a_proof_is_said_and_is_not_zero()
    {
        var result = (Effect with { Kept = null, Rupture = null, Slope = null }).Evaluate();
        Assert.Null(result.ChanceAfterProof);
        Assert.Null(result.FillsUsed);
        Assert.Null(result.TimeUsed);
        Assert.Equal(3, result.Findings.Count(f => f.Message.Contains("not given", StringComparison.Ordinal)
            || f.Message.Contains("is not zero", StringComparison.Ordinal)));
        Assert.Contains("not known", result.Ages, StringComparison.Ordinal);
    }

    // With a shape below 1 the formula makes a survivor younger: allowed to print, not to parameters unverified.
    [Fact]
    public void A_proof_makes_no_vessel_younger_on_unpublished_parameters()
    {
        var early = Effect with { Rupture = StressRuptureParameters.LikeAramid with { Shape = 0.5 } };
        var result = early.Evaluate();
        Assert.Equal(result.ReliabilityWithoutProof, result.ReliabilityGivenProof);
        var printed = (early with { Rupture = early.Rupture! with { Source = Printed } }).Evaluate();
        Assert.True(printed.ReliabilityGivenProof > printed.ReliabilityWithoutProof);
    }

    [Fact]
    public void A_wider_gap_is_safer_and_the_unit_of_pressure_does_not_matter() =>
        Gen.Select(Gen.Double[0.02, 0.3], Gen.Double[0.01, 0.2], Gen.Double[1.1, 4]).Sample((strength, load, ratio) =>
        {
            var close = new StrengthInterference((40 * ratio).BarGauge(), strength, 40.BarGauge(), load);
            var wide = close with { Strength = (44 * ratio).BarGauge() };
            Assert.True(wide.Normal().Index.Beta > close.Normal().Index.Beta);
            Assert.True(wide.Lognormal().Index.Chance <= close.Lognormal().Index.Chance);
            var psi = close with { Strength = close.Strength.Psi.PsiGauge(), Load = close.Load.Psi.PsiGauge() };
            Tolerance.Relative(close.Lognormal().Index.Beta, psi.Lognormal().Index.Beta, 1e-9);
        });

    [Fact]
    public void A_rare_chance_says_what_counting_would_take()
    {
        var rare = new StrengthInterference(180.BarGauge(), 0.1, 60.BarGauge(), 0.05);
        Assert.Contains("2 995 731 fills", Assert.Single(rare.Normal().Findings).Message, StringComparison.Ordinal);
        Assert.Empty((rare with { Strength = 70.BarGauge() }).Normal().Findings);
        Assert.Contains("Give at least one spread", Assert.Throws<InvalidDesignException>(() => (rare
            with { StrengthSpread = 0, LoadSpread = 0 }).Normal()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Tests_needed_are_the_first_number_that_is_enough() =>
        Gen.Select(Gen.Double[0.005, 0.3], Gen.Int[0, 5]).Sample((chance, failures) =>
        {
            var n = FewFailureTests.Needed(chance, failures, 0.9);
            Assert.True(FewFailureTests.AtMost(failures, n, 0.9) <= chance * (1 + 1e-8));
            Assert.True(FewFailureTests.AtMost(failures, n - 1, 0.9) > chance * (1 - 1e-8));
        });

    [Fact]
    public void More_failures_or_fewer_tests_show_less()
    {
        Assert.True(FewFailureTests.AtMost(1, 30, 0.9) > FewFailureTests.AtMost(0, 30, 0.9));
        Assert.True(FewFailureTests.AtMost(0, 20, 0.9) > FewFailureTests.AtMost(0, 30, 0.9));
        Assert.Equal(1, FewFailureTests.AtMost(3, 3, 0.9));
        Assert.Contains("number of failures is 4; it must be 0 to 3",
            Assert.Throws<OutOfRangeException>(() => FewFailureTests.AtMost(4, 3, 0.9)).Message, StringComparison.Ordinal);
    }
}
