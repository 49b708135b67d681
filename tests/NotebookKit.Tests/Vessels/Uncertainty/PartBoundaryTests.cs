using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Vessels.Testing;

namespace NotebookKit.Tests.Vessels.Uncertainty;

/// <summary>Every figure by which evidence part by part is judged, tried just on either side of it.</summary>
public class PartBoundaryTests
{
    private static readonly PredictedPart Part = new("nozzle end, bonded plug", 150.BarGauge());

    // Of a normal sample 95 in 100 lie between the shares 0.025 and 0.975; what lies outside is called out.
    [Theory]
    [InlineData(0.025, "far below")]
    [InlineData(0.975, "far above")]
    public void A_burst_outside_the_middle_nineteen_twentieths_of_what_was_believed_is_called_out(double share, string words)
    {
        var logRatio = EvidenceBoundaryTests.Bisect(-2.5, 1.5, x => PartPosterior.Before(Part.Before).NextBelow(x, 0) - share);
        var outward = share < 0.5 ? -1e-3 : 1e-3;
        Assert.Contains(Learned(logRatio + outward).Findings, IsCalledOut);
        Assert.DoesNotContain(Learned(logRatio - outward).Findings, IsCalledOut);

        bool IsCalledOut(Finding f) => f.Message.Contains(words, StringComparison.Ordinal);

        static PartLearning Learned(double x) => PartEvidence.Of(new PartBurst("A", (150 * Math.Exp(x)).BarGauge(), Part.Name, [Part]))
            .Learn([Part]);
    }

    [Fact]
    public void Scatter_past_the_widest_that_was_studied_is_warned_of()
    {
        var spread = EvidenceBoundaryTests.Bisect(0.01, 0.8, s => Learned(s).Parts[0].Scatter - 0.20);
        Assert.DoesNotContain(Learned(spread * 0.999).Findings, IsWarned);
        Assert.Contains(Learned(spread * 1.001).Findings, IsWarned);

        static bool IsWarned(Finding f) => f.Message.Contains("from vessel to vessel", StringComparison.Ordinal);

        static PartLearning Learned(double s) => PartEvidence.Of([.. new[] { -1.0, -0.4, 0, 0.4, 1 }.Select((z, i) =>
            new PartBurst($"{i}", (130 * Math.Exp(z * s)).BarGauge(), Part.Name, [Part]))]).Learn([Part]);
    }

    [Theory]
    [InlineData(1000, 1, true)]
    [InlineData(1001, 1, false)]
    [InlineData(1, 40, true)]
    [InlineData(1, 41, false)]
    [InlineData(1, 0, false)]
    public void There_are_up_to_a_thousand_tests_and_forty_parts(int tests, int parts, bool isTaken)
    {
        PredictedPart[] all = [.. Enumerable.Range(0, parts).Select(i => new PredictedPart($"part {i}", 150.BarGauge()))];
        Assert.Equal(isTaken, PartEvidence.Of([.. Enumerable.Range(0, tests).Select(i => new PartHeld($"{i}", 40.BarGauge(), all))])
            .Validate().Count == 0);
    }

    [Theory]
    [InlineData(0.99e-9, false)]
    [InlineData(1e-9, true)]
    [InlineData(0.5, true)]
    [InlineData(0.501, false)]
    public void A_chance_asked_for_goes_from_one_in_a_thousand_million_to_a_half(double chance, bool isTaken)
    {
        var learned = PartEvidence.Of().Learn([Part]);
        if (isTaken) Tolerance.Absolute(Math.Log(chance), Math.Log(learned.ChanceBelow(learned.PressureOfChance(chance))), 0.02);
        else Assert.Throws<OutOfRangeException>(() => learned.PressureOfChance(chance));
    }

    [Theory]
    [InlineData(0.3, 1.5, 0.001, "ratio of actual over predicted strength")]
    [InlineData(0.05, 0.6, 0.001, "doubt of the ratio")]
    [InlineData(0.04, 0.4, 0.001, "scatter from vessel to vessel")]
    [InlineData(0.05, 1, 0.001, "doubt of the scatter")]
    public void A_prior_stays_within_what_it_was_made_for(double low, double high, double hair, string what)
    {
        foreach (var taken in new[] { low, high }) Assert.Empty(With(taken).Validate());
        foreach (var refused in new[] { low - hair, high + hair })
        {
            var said = Assert.Single(With(refused).Validate()).Message;
            Assert.StartsWith(what, said, StringComparison.Ordinal);
            Assert.Contains($"it must be {Digits.Round(low)} to {Digits.Round(high)}", said, StringComparison.Ordinal);
            Assert.Throws<InvalidDesignException>(() => PartEvidence.Of().Learn([Part with { Prior = With(refused) }]));
        }

        PartPrior With(double value) => what switch
        {
            "ratio of actual over predicted strength" => PartPrior.Default with { Ratio = value },
            "doubt of the ratio" => PartPrior.Default with { RatioDoubt = value },
            "scatter from vessel to vessel" => PartPrior.Default with { Scatter = value },
            _ => PartPrior.Default with { ScatterDoubt = value },
        };
    }

    // A wall's doubt: making from one in twenty below to one in twenty above, ln(high/low)/3.2897, with the model's 0.27, at most 0.6.
    // By hand: 0.85/0.50 gives 0.16130, and √(0.16130² + 0.27²) = 0.31451; nearly the widest that a making may be, 0.201 to 1.099, gives
    // 0.51642 and 0.58274, so that the prior's own 0.6 is never passed.
    [Fact]
    public void A_wall_s_prior_adds_the_doubt_of_the_making_to_that_of_the_model()
    {
        Tolerance.Absolute(0.31451, Of(0.50, 0.85).RatioDoubt, 2e-5);
        Tolerance.Absolute(0.58274, Of(0.201, 1.099).RatioDoubt, 2e-5);
        Assert.Throws<InvalidDesignException>(() => Of(0.199, 1.099));

        static PartPrior Of(double low, double high) => PartPrior.Of(Samples.Trainer.Fabrication with
        {
            EfficiencyLow = (100 * low).Percent(), Efficiency = (50 * (low + high)).Percent(), EfficiencyHigh = (100 * high).Percent(),
        });
    }
}
