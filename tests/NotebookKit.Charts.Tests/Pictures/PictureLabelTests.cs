using System.Globalization;
using System.Xml.Linq;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Charts.Pictures;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Pictures;

public sealed class PictureLabelTests
{
    // The sizes of letters here are the guessed ones; what a browser makes of them is measured elsewhere.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_word_meets_a_curve_or_another_word_whatever_the_curves(bool wide)
    {
        var words = 0;
        for (var seed = 0; seed < 60; seed++)
        {
            var chart = SeededCharts.Of(seed);
            var svg = XElement.Parse(wide ? chart.ToSvg() : chart.ToNarrowSvg());
            var boxes = Boxes(svg);
            var lines = svg.Descendants().Where(e => e.Name.LocalName == "polyline" && e.Parent!.Attribute("clip-path") is not null)
                .SelectMany(e => Dense(e.Attribute("points")!.Value)).ToList();
            Assert.NotEmpty(lines);
            var known = chart.Limits.Select(l => l.Label).Concat(chart.Events.Select(e => e.Label)).Concat(chart.Callouts.Select(c =>
                c.Text)).ToHashSet();
            foreach (var (text, box) in boxes)
            {
                words += known.Contains(text) ? 1 : 0;
                Assert.DoesNotContain(lines, p => p.X > box.Left && p.X < box.Right && p.Y > box.Top && p.Y < box.Bottom);
                Assert.DoesNotContain(boxes, b => b.Box != box && b.Box.Meets(box));
            }

            // Nothing is lost: every word stands on the chart or below it.
            var all = string.Join(' ', svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));
            Assert.All(known, k => Assert.All(k.Split(' '), w => Assert.Contains(w, all, StringComparison.Ordinal)));
        }

        Assert.True(words > 100, $"Only {words} words stand on the charts themselves.");
    }

    [Fact]
    public void A_word_without_a_place_stands_below_with_the_place_of_its_line()
    {
        // A curve that fills the frame from edge to edge.
        var x = new Series("Time", "s", [.. Enumerable.Range(0, 4_000).Select(i => i / 4_000.0)]);
        var y = new Series("Force", "N", [.. Enumerable.Range(0, 4_000).Select(i => (double)(i % 2))]);
        var chart = new EngineeringChart("Full", Axis.For(x), Axis.For(y)) { Marks = [new Curve(x, y)] }.With(new LimitLine(0.5, "limit"));
        var text = XElement.Parse(chart.ToSvg()).Descendants().Single(e => e.Name.LocalName == "text"
            && e.Value == "line at 0.5: limit");
        var bottom = XElement.Parse(chart.ToSvg()).Descendants().Single(e => e.Name.LocalName == "text" && e.Value == "Time [s]");
        Assert.True(Number(text, "y") > Number(bottom, "y"));
    }

    private static List<(string Text, LabelBox Box)> Boxes(XElement svg) => [.. svg.Descendants().Where(e => e.Name.LocalName == "text")
        .Select(e =>
        {
            var (x, y, size) = (Number(e, "x"), Number(e, "y"), Number(e, "font-size"));
            var width = 0.6 * size * e.Value.Length;
            var from = e.Attribute("text-anchor")?.Value switch { "middle" => -width / 2, "end" => -width, _ => 0 };
            // Turned by a quarter, what runs to the right runs up.
            var box = e.Attribute("transform") is null ? new LabelBox(x + from, y - (0.75 * size), x + from + width, y + (0.2 * size))
                : new LabelBox(x - (0.75 * size), y - from - width, x + (0.2 * size), y - from);
            return (e.Value, box);
        })];

    private static IEnumerable<(double X, double Y)> Dense(string points)
    {
        var list = points.Split(' ').Select(p => p.Split(',')).Select(p => (X: double.Parse(p[0], CultureInfo.InvariantCulture),
            Y: double.Parse(p[1], CultureInfo.InvariantCulture))).ToList();
        for (var i = 1; i < list.Count; i++)
            for (var k = 0; k <= 4; k++)
                yield return (list[i - 1].X + ((list[i].X - list[i - 1].X) * k / 4), list[i - 1].Y + ((list[i].Y - list[i - 1].Y) * k / 4));
    }

    private static double Number(XElement e, string name) => double.Parse(e.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
