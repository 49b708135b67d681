using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Pictures;

/// <summary>Charts with some curves and some words, drawn by lot; the same seed gives the same chart.</summary>
internal static class SeededCharts
{
    private static readonly string[] Words = ["working", "water out", "proof pressure, 94.5 bar gauge", "apogee", "kept clear of people",
        "best fill", "least of the three"];

    public static EngineeringChart Of(int seed)
    {
        var random = new Random(seed);
        var x = new Series("Time", "s", [.. Enumerable.Range(0, 240).Select(i => i / 24.0)]);
        var marks = Enumerable.Range(0, random.Next(1, 6)).Select(k =>
        {
            var (a, b, c, d) = (random.NextDouble(), random.NextDouble() * 3, random.NextDouble() * 6, random.NextDouble());
            return (Mark)new Curve(x, new Series($"curve {k}", "bar gauge",
                [.. x.Values.Select(t => 40 + (30 * a * Math.Sin((b * t) + c)) + (20 * d * Math.Cos(0.7 * b * t)))]));
        }).ToList();
        return new EngineeringChart("Seeded curves", Axis.For(x), new Axis("Pressure", "bar gauge")) { Marks = marks }
            .With(new LimitLine(20 + (40 * random.NextDouble()), Words[random.Next(Words.Length)]),
                new LimitLine(10 * random.NextDouble(), Words[random.Next(Words.Length)]) { IsVertical = true })
            .With(new EventLine(10 * random.NextDouble(), Words[random.Next(Words.Length)]),
                new EventLine(10 * random.NextDouble(), Words[random.Next(Words.Length)]))
            .With(new Callout(10 * random.NextDouble(), 20 + (40 * random.NextDouble()), Words[random.Next(Words.Length)]));
    }
}
