using System.Text.Json;
using NotebookKit.Charts.Figures;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Charts.Pictures;
using NotebookKit.Charts.Tests.Browser;
using NotebookKit.Charts.Tests.Pictures;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Figures;

/// <summary>Words of live figures lie over no curve and over no other word, at the smallest size of a figure and at larger ones.</summary>
public sealed class LiveWordTests
{
    // The drawing area in a notebook editor 650 px wide, and in larger windows.
    [Theory]
    [InlineData(540, 300)]
    [InlineData(700, 345)]
    [InlineData(1200, 345)]
    [InlineData(900, 800)]
    public void No_word_meets_a_curve_or_another_word_at_any_size(double width, double height)
    {
        var words = 0;
        for (var seed = 0; seed < 60; seed++)
        {
            var chart = SeededCharts.Of(seed);
            using var figure = JsonDocument.Parse(chart.ToFigureJson());
            var layout = figure.RootElement.GetProperty("layout");
            var (x, y) = (Range(layout, "xaxis"), Range(layout, "yaxis"));
            double X(double value) => (value - x.From) / (x.To - x.From) * width;
            double Y(double value) => (y.To - value) / (y.To - y.From) * height;
            var boxes = layout.GetProperty("annotations").EnumerateArray().Where(a => a.GetProperty("xref").GetString() == "x")
                .Select(a => Box(a, X, Y)).ToList();
            var lines = figure.RootElement.GetProperty("data").EnumerateArray()
                .SelectMany(t => Dense([.. t.GetProperty("x").EnumerateArray().Zip(
                    t.GetProperty("y").EnumerateArray(), (a, b) => (X(a.GetDouble()), Y(b.GetDouble())))]))
                .Concat(chart.Limits.SelectMany(l => Rule(l.IsVertical, l.Value))).Concat(chart.Events.SelectMany(e => Rule(true, e.At)))
                .ToList();
            words += boxes.Count;
            foreach (var (text, box) in boxes)
            {
                Assert.DoesNotContain(lines, p => p.X > box.Left && p.X < box.Right && p.Y > box.Top && p.Y < box.Bottom);
                Assert.DoesNotContain(boxes, b => b.Box != box && b.Box.Meets(box));
                Assert.True(box.Left >= 0 && box.Right <= width && box.Top >= 0 && box.Bottom <= height,
                    $"{seed}: {text} leaves the area.");
            }

            // Nothing is lost: every word stands in the area or in the key above it.
            var all = layout.GetProperty("annotations").GetRawText().Replace("<br>", " ", StringComparison.Ordinal);
            Assert.All(chart.Limits.Select(l => l.Label).Concat(chart.Events.Select(e => e.Label))
                .Concat(chart.Callouts.Select(c => c.Text)), k => Assert.All(k.Split(' '),
                    w => Assert.Contains(w, all, StringComparison.Ordinal)));

            IEnumerable<(double X, double Y)> Rule(bool upright, double value) => upright ? Dense([(X(value), 0), (X(value), height)])
                : Dense([(0, Y(value)), (width, Y(value))]);
        }

        Assert.True(words > 200, $"Only {words} words stand in the figures themselves.");
    }

    [Fact]
    public void A_word_without_a_place_is_a_letter_with_its_key_above()
    {
        // A curve that leaves room for a letter alone.
        var x = new Series("Time", "s", [.. Enumerable.Range(0, 400).Select(i => i / 10.0)]);
        var y = new Series("Force", "N", [.. Enumerable.Range(0, 400).Select(i => (double)(i % 2))]);
        var words = LiveWords.Of(new EngineeringChart("Full", Axis.For(x), Axis.For(y)) { Marks = [new Curve(x, y)] }
            .With(new LimitLine(0.5, "limit of the force")));
        Assert.Empty(words.Words);
        Assert.Equal([("", "line at 0.5: limit of the force")], words.Key);
    }

    [Fact]
    public void Names_beside_points_stand_where_no_other_stands_and_run_inwards_at_the_edges()
    {
        (double X, double Y)[] at = [(0, 0), (500, 50), (505, 50.5), (1000, 100)];
        var points = new Points(new Series("Mass", "g", [.. at.Select(p => p.X)]), new Series("Pressure", "bar gauge",
            [.. at.Select(p => p.Y)])) { Labels = ["first layup", "second layup", "third layup", "fourth layup"], LabelsShown = true };
        var words = LiveWords.Of(new EngineeringChart("Layups", Axis.For(points.X), Axis.For(points.Y)) { Marks = [points] });
        Assert.EndsWith("right", words.NameOf(points, 0)!.Value.Side, StringComparison.Ordinal);
        Assert.EndsWith("left", words.NameOf(points, 3)!.Value.Side, StringComparison.Ordinal);
        Assert.NotEqual(words.NameOf(points, 1)!.Value.Side, words.NameOf(points, 2)!.Value.Side);
    }

    // A browser is the judge: boxes and curves as the drawing library lays them out, in the browser's own letters.
    [SkippableTheory, Trait("Length", "long")]
    [InlineData(650)]
    [InlineData(1000)]
    public void In_a_browser_no_word_lies_over_a_curve_or_another_word(int width)
    {
        Skip.If(HeadlessBrowser.WhyNot.Length > 0, HeadlessBrowser.WhyNot);
        const int charts = 16;
        var places = string.Concat(Enumerable.Range(0, charts).Select(k => $"<div id='c{k}' style='width:{width}px'></div>"));
        var figures = string.Join(',', Enumerable.Range(0, charts).Select(k => SeededCharts.Of(k).ToFigureJson()));
        var seen = HeadlessBrowser.Run($$"""
            <!DOCTYPE html><meta charset="utf-8"><body>{{places}}<script>{{PlotlyScript.Wrapped}}</script><script>
            const figures = [{{figures}}], wrong = [];
            let words = 0, area = [9999, 9999];
            Promise.all(figures.map((f, k) => Plotly.newPlot("c" + k, f.data, f.layout, f.config).then(g => {
              const size = g._fullLayout._size, home = g.getBoundingClientRect();
              area = [Math.min(area[0], size.w), Math.min(area[1], size.h)];
              const notes = [...g.querySelectorAll("g.annotation .annotation-text-g")].map(e => ({ t: e.textContent, b: e.getBoundingClientRect() }))
                .filter(n => n.b.top > home.top + size.t - 1);
              words += notes.length;
              const dots = [];
              for (const path of g.querySelectorAll(".scatterlayer path.js-line")) {
                const matrix = path.getScreenCTM(), length = path.getTotalLength();
                for (let at = 0; at <= length; at += 1) dots.push(path.getPointAtLength(at).matrixTransform(matrix));
              }
              notes.forEach((a, i) => {
                if (dots.some(p => p.x > a.b.left && p.x < a.b.right && p.y > a.b.top + 1 && p.y < a.b.bottom - 1)) wrong.push(`${k}: "${a.t}" lies over a curve`);
                notes.slice(i + 1).forEach(b => {
                  if (Math.min(a.b.right, b.b.right) - Math.max(a.b.left, b.b.left) > 0.5 && Math.min(a.b.bottom, b.b.bottom) - Math.max(a.b.top, b.b.top) > 0.5)
                    wrong.push(`${k}: "${a.t}" lies over "${b.t}"`);
                });
              });
            }))).then(() => { const p = document.createElement("pre"); p.id = "result"; p.textContent = JSON.stringify({ wrong, words, area }); document.body.append(p); });
            </script>
            """);
        using var answer = JsonDocument.Parse(seen);
        var wrong = answer.RootElement.GetProperty("wrong").EnumerateArray().Select(w => w.GetString()).ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.True(answer.RootElement.GetProperty("words").GetInt32() > 3 * charts);
        // The area for which the words were placed is no larger than the one they have.
        var area = answer.RootElement.GetProperty("area").EnumerateArray().Select(a => a.GetDouble()).ToList();
        var smallest = LiveWords.Of(SeededCharts.Of(0)).Frame!.Box;
        Assert.True(area[0] >= smallest.Right - smallest.Left, $"{area[0]} px wide.");
        Assert.True(area[1] >= smallest.Bottom - smallest.Top, $"{area[1]} px high.");
    }

    private static (double From, double To) Range(JsonElement layout, string axis)
    {
        var range = layout.GetProperty(axis).GetProperty("range");
        return (range[0].GetDouble(), range[1].GetDouble());
    }

    // Letters are guessed at 0.6 of their height; a browser's own are measured elsewhere.
    private static (string Text, LabelBox Box) Box(JsonElement note, Func<double, double> toX, Func<double, double> toY)
    {
        var arrow = note.GetProperty("showarrow").GetBoolean();
        var text = note.GetProperty("text").GetString()!.Replace("<b>", "", StringComparison.Ordinal).Replace("</b>", "",
            StringComparison.Ordinal);
        var lines = text.Split("<br>");
        var size = note.GetProperty("font").GetProperty("size").GetDouble();
        var (w, h) = (0.6 * size * lines.Max(l => l.Length), 1.2 * size * lines.Length);
        if (note.TryGetProperty("textangle", out _)) (w, h) = (h, w);
        var (x, y) = (toX(note.GetProperty(arrow ? "ax" : "x").GetDouble()), toY(note.GetProperty(arrow ? "ay" : "y").GetDouble()));
        var left = (arrow ? "center" : note.GetProperty("xanchor").GetString()) switch { "left" => x, "right" => x - w, _ => x - (w / 2) };
        var top = (arrow ? "middle" : note.GetProperty("yanchor").GetString()) switch { "top" => y, "bottom" => y - h, _ => y - (h / 2) };
        return (text, new LabelBox(left, top, left + w, top + h));
    }

    private static IEnumerable<(double X, double Y)> Dense(IReadOnlyList<(double X, double Y)> line)
    {
        for (var i = 1; i < line.Count; i++)
        {
            var ((x, y), (toX, toY)) = (line[i - 1], line[i]);
            var steps = Math.Max(4, (int)(double.Hypot(toX - x, toY - y) / 2));
            for (var k = 0; k <= steps; k++) yield return (x + ((toX - x) * k / steps), y + ((toY - y) * k / steps));
        }
    }
}
