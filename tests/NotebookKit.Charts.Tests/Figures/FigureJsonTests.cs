using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Figures;
using NotebookKit.Quantities;
using Plotly.NET;

namespace NotebookKit.Charts.Tests.Figures;

public sealed class FigureJsonTests
{
    public static TheoryData<string> Names => [.. Gallery.All.Keys];

    // Plotly.NET's own writer is the outside reference: the same traces and the same layout, number for number.
    [Theory]
    [MemberData(nameof(Names))]
    public void It_says_the_same_as_the_writer_of_plotly_net(string name)
    {
        var chart = Gallery.All[name]();
        var ours = JsonNode.Parse(chart.ToFigureJson())!;
        var theirs = JsonNode.Parse(GenericChart.toFigureJson(chart.ToPlotly()))!;
        Same(theirs["data"], ours["data"], "data");
        Same(theirs["layout"], ours["layout"], "layout");
    }

    [Fact]
    public void A_gap_is_written_as_null()
    {
        using var figure = JsonDocument.Parse(LineChart.Draw("t", new Series("Time", "s", [0, 1, 2]),
            new Series("Height", "m", [1, double.NaN, double.PositiveInfinity])).ToFigureJson());
        Assert.Equal([JsonValueKind.Number, JsonValueKind.Null, JsonValueKind.Null],
            figure.RootElement.GetProperty("data")[0].GetProperty("y").EnumerateArray().Select(v => v.ValueKind));
    }

    [Fact]
    public void Hostile_text_can_neither_end_a_script_nor_become_markup()
    {
        const string hostile = "</script><script>alert(1)</script> & <a href='javascript:alert(1)'>x</a>";
        var json = LineChart.Draw(hostile, new Series(hostile, "s", [0, 1]), new Series(hostile, "m", [0, 1])).ToFigureJson();
        Assert.DoesNotContain('<', json.Replace("\\u003C", "", StringComparison.Ordinal));
        using var figure = JsonDocument.Parse(json);
        Assert.StartsWith("<b>&lt;/script&gt;",
            figure.RootElement.GetProperty("layout").GetProperty("title").GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_log_keeps_its_ends_its_peak_and_its_gaps_and_few_points()
    {
        var time = new Series("Time", "s", [.. Enumerable.Range(0, 200_000).Select(i => i * 0.01)]);
        double[] values = [.. time.Values.Select(t => Math.Sin(t / 50))];
        values[77_777] = 9;
        values[150_001] = double.NaN;
        var (x, y) = Thinning.Keep(time, new Series("Height", "m", values));
        Assert.InRange(x.Length, 2, Thinning.MaximumPoints);
        Assert.Equal((time[0], time[^1]), (x[0], x[^1]));
        Assert.Contains(9.0, y);
        Assert.Equal(777.77, x[Array.IndexOf(y, 9.0)], 9);
        Assert.Contains(double.NaN, y);
        Assert.Equal(x.Order(), x);
    }

    [Fact]
    public void Too_many_points_are_shown_one_in_some_and_the_legend_says_so()
    {
        var east = new Series("East", "m", [.. Enumerable.Range(0, 12_000).Select(i => (double)i)]);
        var json = LandingChart.Draw(east, east with { Name = "North" }, []).ToFigureJson();
        Assert.Contains("landings (one in 3 shown)", json, StringComparison.Ordinal);
        using var figure = JsonDocument.Parse(json);
        Assert.Equal(4_000, figure.RootElement.GetProperty("data")[0].GetProperty("x").GetArrayLength());
    }

    private static void Same(JsonNode? expected, JsonNode? actual, string where)
    {
        switch (expected)
        {
            case JsonObject objects:
                Assert.True(actual is JsonObject, where);
                Assert.Equal(objects.Select(p => p.Key).Order(), actual!.AsObject().Select(p => p.Key).Order());
                foreach (var (key, value) in objects) Same(value, actual![key], $"{where}.{key}");
                break;
            case JsonArray items:
                Assert.Equal(items.Count, actual!.AsArray().Count);
                for (var i = 0; i < items.Count; i++) Same(items[i], actual![i], $"{where}[{i}]");
                break;
            case JsonValue value when value.TryGetValue<double>(out var number):
                var ours = actual!.GetValue<double>();
                Assert.True(Math.Abs(number - ours) <= 1e-6 * Math.Abs(number), $"{where}: {number} and {ours}");
                break;
            default:
                Assert.Equal(expected?.ToJsonString(), actual?.ToJsonString());
                break;
        }
    }
}
