using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Building.Resins;

public class ResinPlanTests
{
    private static readonly ResinSystem Slow = new("slow epoxy", 30.Percent(), 40.Minutes());

    [Fact]
    public void What_is_mixed_is_what_stays_and_what_is_lost()
    {
        var plan = new ResinPlan(Slow, [new("sleeve", 40.Grams()), new("tape", 25.Grams())]) { Waste = 20.Percent() }.Divide();
        Tolerance.Relative(65 * 1.2, (plan.Resin + plan.Hardener).Grams, 1e-12);
        Tolerance.Relative(0.30, plan.Hardener / plan.Resin, 1e-12);
    }

    [Fact]
    public void A_cup_ends_with_a_ply_where_the_next_would_not_fit()
    {
        // 40 min × 60 % × 5 g/min is 120 g, the data sheet's mass 100 g: 100 g a cup.
        var plan = new ResinPlan(Slow, [new("sleeve", 60.Grams()), new("tape", 50.Grams()), new("veil", 20.Grams())]) {
            Waste = 0.Percent() }.Divide();
        Assert.Equal(100, plan.MaximumBatch.Grams, 9);
        Assert.Equal(2, plan.Batches.Count);
        Assert.Equal(["sleeve"], plan.Batches[0].For);
        Assert.Equal(["tape", "veil"], plan.Batches[1].For);
    }

    [Fact]
    public void A_ply_larger_than_a_cup_is_divided_evenly()
    {
        var plan = new ResinPlan(Slow, [new("sleeve", 250.Grams())]) { Waste = 0.Percent() }.Divide();
        Assert.Equal(3, plan.Batches.Count);
        Assert.All(plan.Batches, b => Tolerance.Relative(250.0 / 3, b.Mixed.Grams, 1e-12));
        Assert.Equal(["sleeve, part 2 of 3"], plan.Batches[1].For);
    }

    [Fact]
    public void Every_cup_is_on_the_work_before_it_thickens() =>
        Gen.Select(Gen.Double[1, 400].Array[1, 8], Gen.Double[5, 120], Gen.Double[1, 40],
            Gen.Double[0, 100]).Sample((grams, life, pace, waste) =>
        {
            var plan = new ResinPlan(Slow with { PotLife = life.Minutes() },
                [.. grams.Select((g, i) => new ResinShare($"ply {i}", g.Grams()))])
            {
                Pace = MassFlow.FromGramsPerSecond(pace / 60), Waste = waste.Percent(),
            }.Divide();
            Assert.All(plan.Batches, b => Assert.True(b.Time.Minutes <= 0.6 * life * (1 + 1e-9)));
            Assert.All(plan.Batches, b => Assert.True(b.Mixed.Grams <= 100 * (1 + 1e-9)));
            Tolerance.Relative(grams.Sum() * (1 + waste / 100), plan.Batches.Sum(b => b.Mixed.Grams), 1e-9);
        }, iter: 300);

    [Fact]
    public void Hands_too_slow_for_the_resin_are_warned() =>
        Assert.Contains((new ResinPlan(Slow with { PotLife = 3.Minutes() }, [new("sleeve", 60.Grams())])).Divide().Findings,
            f => f.Message.Contains("slower hardener", StringComparison.Ordinal));

    [Fact]
    public void Bad_input_is_refused_with_every_reason()
    {
        var message = Assert.Throws<InvalidDesignException>(() => new ResinPlan(new("wrong", 2.Percent(), 1.Minutes()),
            [new("sleeve", Mass.Zero)]) { Waste = 300.Percent() }.Divide()).Message;
        foreach (var part in new[] { "hardener of wrong", "pot life of wrong", "resin for sleeve", "resin wasted" }) Assert.Contains(part,
            message, StringComparison.OrdinalIgnoreCase);
    }
}
