using CsCheck;
using NotebookKit.Charts.Engineering;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Engineering;

public sealed class ParetoTests
{
    [Fact]
    public void Nothing_on_the_front_is_beaten_and_everything_off_it_is() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100]).Array[1, 40].Sample(points =>
        {
            var cost = new Series("Mass", "g", [.. points.Select(p => p.Item1)]);
            var gain = new Series("Pressure", "bar gauge", [.. points.Select(p => p.Item2)]);
            var front = ParetoChart.Front(cost, gain, Enumerable.Range(0, points.Length));
            bool Beats(int a, int b) => cost[a] <= cost[b] && gain[a] >= gain[b] && (cost[a] < cost[b] || gain[a] > gain[b]);
            Assert.NotEmpty(front);
            Assert.All(front, f => Assert.DoesNotContain(Enumerable.Range(0, points.Length), i => Beats(i, f)));
            Assert.All(Enumerable.Range(0, points.Length).Except(front),
                i => Assert.Contains(front, f => Beats(f, i) || (cost[f] == cost[i] && gain[f] == gain[i])));
        });

    [Fact]
    public void A_refused_candidate_is_never_on_the_front_and_keeps_its_reason()
    {
        var chart = ParetoChart.Draw("t", new Series("Mass", "g", [1, 2]), new Series("Pressure", "bar gauge", [99, 50]),
            ["light", "heavy"], ["jams", ""]);
        var json = chart.ToFigureJson();
        Assert.Contains("light: jams", json, StringComparison.Ordinal);
        Assert.Equal(["not beaten", "refused"], chart.Marks.Select(m => m.Name));
    }
}
