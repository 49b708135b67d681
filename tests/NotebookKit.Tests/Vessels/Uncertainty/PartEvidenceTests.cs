using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Uncertainty;

public class PartEvidenceTests
{
    private static PredictedPart Wall(double bar = 180, double cubicCentimetres = 400)
        => new("wall", bar.BarGauge()) { Stressed = Volume.FromCubicCentimeters(cubicCentimetres) };

    private static readonly PredictedPart Nozzle = new("nozzle end, bonded plug", 150.BarGauge());
    private static readonly PredictedPart Forward = new("forward end, closure", 260.BarGauge());
    private static readonly PredictedPart[] Vessel = [Wall(), Nozzle, Forward];

    [Fact]
    public void A_burst_moves_the_part_that_gave_way_and_raises_the_others_no_less_than_holding_does()
    {
        // Wall and forward end far above, so that having held says little of them.
        PredictedPart[] strong = [Wall(400), Nozzle, Forward with { Burst = 500.BarGauge() }];
        var before = PartEvidence.Of().Learn(strong);
        var after = PartEvidence.Of(new PartBurst("twin 1", 120.BarGauge(), "Nozzle end, bonded plug", strong)).Learn(strong);
        Assert.Equal(1, after.Parts[1].Bursts);
        Assert.Equal(1, after.Parts[0].Held);
        Assert.True(after.Parts[1].BBasis > before.Parts[1].BBasis);
        Assert.True(after.Parts[0].BBasis > before.Parts[0].BBasis);
        Assert.Equal(Nozzle.Name, after.Moves[0].Part);
        Assert.Equal(before.Parts[1].BBasis, after.Moves[0].Before);
        Assert.Equal(after.Parts[1].BBasis, after.Moves[0].After);
        var held = PartEvidence.Of(new PartHeld("twin 1", 120.BarGauge(), strong)).Learn(strong);
        Assert.Equal(held.Parts[0].BBasis, after.Parts[0].BBasis);
        Assert.Equal(held.Parts[2].BBasis, after.Parts[2].BBasis);
        Assert.Empty(before.Moves);
    }

    [Fact]
    public void A_low_burst_lowers_the_part_and_is_called_out()
    {
        var before = PartEvidence.Of().Learn(Vessel);
        var after = PartEvidence.Of(new PartBurst("twin 1", 45.BarGauge(), Nozzle.Name, Vessel)).Learn(Vessel);
        Assert.True(after.Parts[1].BBasis < before.Parts[1].BBasis);
        Assert.Equal(Nozzle.Name, after.Weakest.Part.Name);
        Assert.Contains(after.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("far below what was believed", StringComparison.Ordinal));
    }

    [Fact]
    public void Bursts_that_agree_narrow_the_scatter_and_bursts_that_differ_widen_it()
    {
        PartLearning Of(params double[] bars) => PartEvidence.Of([.. bars.Select((b, i) => new PartBurst($"{i}", b.BarGauge(), "wall",
            [Wall()]))]).Learn([Wall()]);
        var none = Of().Parts[0];
        Assert.True(Of(150, 152, 149, 151, 150).Parts[0].Scatter < 0.6 * none.Scatter);
        Assert.True(Of(90, 190, 120, 170, 150).Parts[0].Scatter > 1.2 * none.Scatter);
        Assert.Contains(Of(90, 190, 120, 170, 150).Findings,
            f => f.Severity == FindingSeverity.Warning && f.Message.Contains("from vessel to vessel", StringComparison.Ordinal));
        Assert.DoesNotContain(Of(150, 152, 149, 151, 150).Findings, f => f.Severity == FindingSeverity.Warning);
        Assert.True(Of(150, 152, 149, 151, 150).Parts[0].BBasis > Of(90, 190, 120, 170, 150).Parts[0].BBasis);
    }

    [Fact]
    public void A_short_twin_teaches_less_of_a_long_vessel_than_a_long_one_does()
    {
        double Bar(double volume) => PartEvidence.Of(new PartBurst("A", 150.BarGauge(), "wall",
            [Wall(180, volume)])).Learn([Wall()]).BBasis.Bar;
        Assert.True(Bar(80) < 0.95 * Bar(400));
        // A larger one isn't taken to be weaker: no credit.
        Assert.Equal(Bar(400), Bar(2000), 9);
    }

    [Fact]
    public void Held_tests_never_lower_a_bound_and_low_ones_teach_next_to_nothing()
    {
        var before = PartEvidence.Of().Learn(Vessel).BBasis.Bar;
        foreach (var bar in new[] { 10, 30, 60, 90, 120 })
        {
            var now = PartEvidence.Of(new PartHeld("C1", bar.BarGauge(), Vessel)).Learn(Vessel).BBasis.Bar;
            Assert.True(now >= before - 1e-6, $"{now} after {before}");
            if (bar == 10) Tolerance.Relative(before, now, 1e-3);
            before = now;
        }
    }

    [Fact]
    public void Two_tests_of_one_vessel_are_one_witness()
    {
        var once = PartEvidence.Of(new PartHeld("C1", 70.BarGauge(), Vessel)).Learn(Vessel);
        var often = PartEvidence.Of(new PartHeld("C1", 70.BarGauge(), Vessel), new PartHeld("c1", 60.BarGauge(), Vessel),
            new PartHeld("C1 ", 70.BarGauge(), Vessel)).Learn(Vessel);
        Assert.Single(often.Tests);
        Assert.Equal(once.BBasis, often.BBasis);
        var burst = PartEvidence.Of(new PartHeld("C1", 70.BarGauge(), Vessel),
            new PartBurst("C1", 120.BarGauge(), "wall", Vessel)).Learn(Vessel);
        Assert.IsType<PartBurst>(Assert.Single(burst.Tests));
    }

    [Fact]
    public void A_test_of_an_end_alone_says_nothing_of_the_wall()
    {
        var before = PartEvidence.Of().Learn(Vessel);
        var after = PartEvidence.Of(new PartBurst("end 1", 140.BarGauge(), Nozzle.Name, [Nozzle])).Learn(Vessel);
        Assert.Equal(before.Parts[0].BBasis, after.Parts[0].BBasis);
        Assert.Equal(0, after.Parts[0].Held);
        Assert.True(after.Parts[1].BBasis > before.Parts[1].BBasis);
    }

    [Fact]
    public void Bursts_of_another_batch_teach_less_and_never_all()
    {
        PartBelief After(int bursts, string batch) =>
            PartEvidence.Of([.. Enumerable.Range(0, bursts).Select(i => new PartBurst($"{i}", (150 + i % 3).BarGauge(), "wall",
                [Wall()]) { Batch = batch })]).Learn([Wall()], "spring").Parts[0];
        Assert.True(After(3, "Spring ").BBasis > After(3, "autumn").BBasis);
        Assert.True(After(3, "autumn").BBasis > After(0, "").BBasis);
        // However many: two shifts of 10 % are left, one of them known from many batches alone.
        var many = After(40, "autumn");
        Assert.InRange(Math.Log(many.RatioHigh / many.RatioLow) / 3.29, 0.11, 0.15);
        Assert.InRange(Math.Log(After(40, "spring").RatioHigh / After(40, "spring").RatioLow) / 3.29, 0, 0.03);
    }

    [Fact]
    public void Bounds_stand_in_order()
    {
        var learned = PartEvidence.Of(new PartBurst("A", 120.BarGauge(), "wall", Vessel)).Learn(Vessel);
        foreach (var part in learned.Parts)
        {
            Assert.True(part.ABasis < part.BBasis && part.BBasis < part.Next && part.ABasis < part.NextLow && part.NextLow < part.Next);
            Assert.True(part.RatioLow < part.Ratio && part.Ratio < part.RatioHigh && part.ScatterLow < part.Scatter
                && part.Scatter < part.ScatterHigh);
        }

        Assert.True(learned.BBasis <= learned.Weakest.BBasis && learned.ABasis < learned.BBasis);
        Assert.Equal(ResultStatus.Completed, learned.Status);
        Assert.Single(learned.Findings, f => f.Message.Contains("never given way", StringComparison.Ordinal));
        Assert.NotEmpty(learned.Cautions);
    }

    [Fact]
    public void The_default_fabrication_has_the_default_prior()
    {
        Tolerance.Absolute(PartPrior.Default.RatioDoubt, PartPrior.Of(Fabrication.HandLaid).RatioDoubt, 5e-3);
        Assert.Equal(PartPrior.Default.Scatter, PartPrior.Of(Fabrication.HandLaid).Scatter);
        Assert.Empty(PartPrior.Of(Fabrication.HandLaid).Validate());
        var bold = PartEvidence.Of().Learn([Wall() with { Prior = new PartPrior(1, 0.1, 0.05, 0.2) }]);
        Assert.Contains(bold.Findings, f => f.Message.Contains("bolder than the default", StringComparison.Ordinal));
    }

    [Fact]
    public void A_failure_of_a_part_that_is_not_here_is_noted_for_what_the_other_parts_held()
    {
        var learned = PartEvidence.Of(new PartBurst("A", 90.BarGauge(), "valve",
            [.. Vessel, new PredictedPart("valve", 300.BarGauge())])).Learn(Vessel);
        Assert.Contains(learned.Findings, f => f.Message.Contains("the vessel in hand has other ends", StringComparison.Ordinal));
    }

    [Fact]
    public void The_weakest_and_untested_end_is_worth_a_test_of_its_own()
    {
        PredictedPart[] twin = [Wall(cubicCentimetres: 80), Nozzle, Forward];
        var choice = PartEvidence.Of([.. Enumerable.Range(0,
            4).Select(i => new PartBurst($"{i}", (150 + i).BarGauge(), "wall", [Wall()]))]).Learn(Vessel).NextTest(
            new TestOption("burst of the wall of a short twin between plates", Duration.FromHours(6), [twin[0]]),
            new TestOption("burst of the nozzle end alone", Duration.FromHours(3), [Nozzle]),
            new TestOption("proof at 60 bar", Duration.FromHours(2), Vessel) { Proof = 60.BarGauge() });
        Assert.Equal("burst of the nozzle end alone", choice.Best.Option.Name);
        Assert.True(choice.Best.GainPerHour > 0);
        Assert.True(choice.Best.Expected > choice.Now);
        Assert.Equal(3, choice.Worths.Count);
        Assert.InRange(choice.Best.ChanceOfLess, 0, 0.6);
    }

    [Fact]
    public void More_work_is_less_gain_for_each_hour()
    {
        var choice = PartEvidence.Of().Learn(Vessel).NextTest(new TestOption("long", Duration.FromHours(8), Vessel),
            new TestOption("short", Duration.FromHours(4), Vessel));
        Assert.Equal("short", choice.Best.Option.Name);
        Tolerance.Relative(2 * choice.Worths[1].GainPerHour, choice.Best.GainPerHour, 1e-9);
        Assert.Equal(choice.Worths[0].Expected, choice.Worths[1].Expected);
    }

    [Fact]
    public void Impossible_evidence_is_refused_with_every_reason()
    {
        var evidence = PartEvidence.Of(
            new PartBurst("A", 100.BarGauge(), "wal", Vessel), new PartBurst("a", 90.BarGauge(), "wall", Vessel),
                new PartHeld("B", 1400.BarGauge(), Vessel),
            new PartHeld("C", 80.BarGauge(), [Nozzle with { Name = "wall" }]), new PartHeld(" ", 80.BarGauge(), []),
                new PartHeld("D", 80.BarGauge(), [Nozzle, Nozzle]));
        var error = Assert.Throws<InvalidDesignException>(() => evidence.Learn(Vessel));
        Assert.Contains("isn't one of its parts", error.Message, StringComparison.Ordinal);
        Assert.Contains("a vessel bursts once", error.Message, StringComparison.Ordinal);
        Assert.Contains("was psi read as bar?", error.Message, StringComparison.Ordinal);
        Assert.Contains("give both or neither", error.Message, StringComparison.Ordinal);
        Assert.Contains("no vessel's name", error.Message, StringComparison.Ordinal);
        Assert.Contains("has 0 parts", error.Message, StringComparison.Ordinal);
        Assert.Contains("2 parts called", error.Message, StringComparison.Ordinal);
        Assert.Contains("no test to choose from", Assert.Throws<InvalidDesignException>(() =>
            PartEvidence.Of().Learn(Vessel).NextTest()).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => PartEvidence.Of().Learn(Vessel).NextTest(new TestOption("x", Duration.FromHours(2),
            Vessel) { Proof = 0.BarGauge() }));
    }
}
