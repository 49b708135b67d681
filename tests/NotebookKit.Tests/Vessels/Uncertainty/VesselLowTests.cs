using NotebookKit.Numerics;
using NotebookKit.Quantities;
using NotebookKit.Tests.Vessels.Testing;

namespace NotebookKit.Tests.Vessels.Uncertainty;

/// <summary>The low burst of a vessel of several parts is a share of many draws of all parts together.</summary>
public class VesselLowTests
{
    private static readonly SeededSamples Numbers = new(20);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4)]
    public void Many_pairs_drawn_at_once_are_those_drawn_one_by_one(int tests)
    {
        var belief = Believed(tests, 0.9);
        double[] first = [.. Enumerable.Range(0, 3000).Select(d => Numbers.Uniform(d, 5)), 1e-16, 1 - 1e-16],
            second = [.. Enumerable.Range(0, 3000).Select(d => Numbers.Uniform(d, 6)), 1 - 1e-16, 1e-16];
        var pairs = new (double, double)[first.Length];
        belief.Draw(first, second, pairs);
        Assert.Equal(first.Zip(second).Select(n => belief.Draw(n.First, n.Second)), pairs);
    }

    // The reference solves every draw, by bisection, and sorts them all.
    [Theory]
    [InlineData(0.10, 0.95, 4000)]
    [InlineData(0.01, 0.95, 4000)]
    [InlineData(0.10, 0.50, 700)]
    [InlineData(0.10, 0.02, 100)]
    public void Solving_only_the_draws_that_may_be_lowest_gives_what_solving_all_gives(double share, double confidence, int draws)
    {
        (PartPosterior Belief, double LogBurst)[] parts = [(Believed(3, 0.9), 17.0), (Believed(0, 1), 17.2), (Believed(5, 1.1), 17.1),
            (Believed(2, 0.7), 18.5)];
        var wanted = -Math.Log(1 - share);
        var points = Enumerable.Range(0, draws).Select(d =>
        {
            (double LogMedian, double Unit)[] pairs = [.. parts.Select((p, k) => p.Belief.Draw(Numbers.Uniform(d, 2 * k),
                Numbers.Uniform(d, 2 * k + 1))).Zip(parts, (drawn, p) => (p.LogBurst + drawn.LogRatio, drawn.Unit))];
            return EvidenceBoundaryTests.Bisect(5, 22, x => pairs.Sum(p => Math.Exp(PartPosterior.LogHazard(x, p))) - wanted);
        }).Order().ToList();
        var place = (1 - confidence) * (draws - 1);
        var i = (int)place;
        var all = points[i] + (place - i) * (points[i + 1] - points[i]);
        var alone = parts.Min(p => p.LogBurst + p.Belief.LowLogPoint(share, confidence));
        Assert.Equal(Math.Min(all, alone), VesselLow.LogPoint(parts, share, confidence, draws), 2e-6);
    }

    private static PartPosterior Believed(int tests, double ratio)
    {
        var part = new PredictedPart("wall", 150.BarGauge());
        return Enumerable.Range(0, tests).Aggregate(PartPosterior.Before(part.Before), (belief, i) =>
            belief.With(Math.Log(ratio) + 0.02 * i, i % 2 == 0, 0));
    }
}
