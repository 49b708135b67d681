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
}
