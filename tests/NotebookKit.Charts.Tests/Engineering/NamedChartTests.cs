using System.Text.Json;
using System.Xml.Linq;
using NotebookKit.Charts.Engineering;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Engineering;

/// <summary>What holds for every named chart.</summary>
public sealed class NamedChartTests
{
    private static readonly Series Time = new("Time", "s", [0, 1, 2]);
    private static readonly Series NoUnit = new("Something", "", [1, 2, 3]);
    private static readonly Series Metres = new("Distance", "m", [1, 2, 3]);
    private static readonly Series Nine = new("Value", "m", [1, 2, 3, 4, 5, 6, 7, 8, 9]);

    public static TheoryData<string> Names => [.. Gallery.All.Keys];

    public static TheoryData<string> WithoutUnit => [.. Unitless.Keys];

    private static Dictionary<string, Func<EngineeringChart>> Unitless { get; } = new(StringComparer.Ordinal)
    {
        ["line, across"] = () => LineChart.Draw("t", NoUnit, Metres),
        ["line, up"] = () => LineChart.Draw("t", Time, NoUnit),
        ["thrust"] = () => ThrustChart.Draw(Time, NoUnit),
        ["thrust, time"] = () => ThrustChart.Draw(NoUnit, Metres),
        ["height and speed, left"] = () => HeightSpeedChart.Draw(Time, NoUnit, Metres),
        ["height and speed, right"] = () => HeightSpeedChart.Draw(Time, Metres, NoUnit),
        ["fill"] = () => FillChart.Draw(Time, NoUnit, Metres, GaugePressure.FromBar(1)),
        ["margin"] = () => MarginChart.Draw(Time, NoUnit, 1),
        ["trade-off, cost"] = () => ParetoChart.Draw("t", NoUnit, Metres, ["a", "b", "c"]),
        ["trade-off, gain"] = () => ParetoChart.Draw("t", Metres, NoUnit, ["a", "b", "c"]),
        ["drag"] = () => DragShareChart.Draw(Time, NoUnit),
        ["burst"] = () => BurstChart.Draw(NoUnit),
        ["map, across"] = () => ContourChart.Draw("t", NoUnit, Metres, Nine),
        ["map, up"] = () => ContourChart.Draw("t", Metres, NoUnit, Nine),
        ["map, value"] = () => ContourChart.Draw("t", Metres, Metres, Nine with { Unit = "" }),
        ["flutter"] = () => FlutterChart.Draw(Metres, NoUnit, Nine, 1.5),
        ["overlay, prediction"] = () => OverlayChart.Draw("t", Time, NoUnit, Time, NoUnit),
        ["overlay, measurement"] = () => OverlayChart.Draw("t", Time, Metres, Time, NoUnit),
        ["track"] = () => TrackChart.Draw(Metres, NoUnit),
        ["path"] = () => FlightPathChart.Draw(Metres, Metres, NoUnit),
        ["landings"] = () => LandingChart.Draw(NoUnit, Metres, []),
    };

    [Theory]
    [MemberData(nameof(WithoutUnit))]
    public void Every_chart_refuses_a_column_without_a_unit(string which) => Assert.Throws<InvalidDesignException>(Unitless[which]);

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_figure_is_json_with_a_unit_on_every_axis(string name)
    {
        using var figure = JsonDocument.Parse(Gallery.All[name]().ToFigureJson());
        var layout = figure.RootElement.GetProperty("layout");
        Assert.NotEmpty(figure.RootElement.GetProperty("data").EnumerateArray());
        var axes = layout.EnumerateObject().Where(p => p.Name.StartsWith("xaxis", StringComparison.Ordinal)
            || p.Name.StartsWith("yaxis", StringComparison.Ordinal)).Select(p => p.Value)
            .Concat(layout.TryGetProperty("scene", out var scene) ? new[] { "xaxis", "yaxis", "zaxis" }.Select(scene.GetProperty)
                : []).ToList();
        Assert.True(axes.Count >= 2);
        foreach (var axis in axes)
        {
            var title = axis.GetProperty("title").GetProperty("text").GetString()!;
            if (axis.TryGetProperty("type", out var type) && type.GetString() == "category") Assert.NotEmpty(title);
            else Assert.Matches(@"^\S.* \[[^\]]+\]$", title);
        }
        foreach (var trace in figure.RootElement.GetProperty("data").EnumerateArray().Where(t => t.GetProperty("type").GetString() ==
            "contour"))
            Assert.Matches(@" \[[^\]]+\]$", trace.GetProperty("colorbar").GetProperty("title").GetProperty("text").GetString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_same_chart_is_the_same_text(string name)
    {
        Assert.Equal(Gallery.All[name]().ToFigureJson(), Gallery.All[name]().ToFigureJson());
        Assert.Equal(Gallery.All[name]().ToSvg(), Gallery.All[name]().ToSvg());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_figure_stays_small(string name) => Assert.InRange(Gallery.All[name]().ToFigureJson().Length, 500, 150_000);

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_picture_is_a_drawing_with_the_same_titles_and_no_script(string name)
    {
        var chart = Gallery.All[name]();
        var svg = XElement.Parse(chart.ToSvg());
        var texts = svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value).ToList();
        Assert.Contains(chart.Title, texts);
        Assert.Contains((chart.Up ?? chart.Y).Title, texts);
        if (chart.Up is null) Assert.Contains(chart.X.Title, texts);
        if (chart.Right is { } right) Assert.Contains(right.Title, texts);
        Assert.DoesNotContain(svg.DescendantsAndSelf(), e => e.Name.LocalName is "script" or "image" or "foreignObject"
            || e.Attributes().Any(a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal)));
        Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", svg.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_weakest_part_is_named_and_stands_on_top()
    {
        using var figure = JsonDocument.Parse(Gallery.All["parts"]().ToFigureJson());
        var bars = figure.RootElement.GetProperty("data")[0];
        Assert.Equal("Nozzle-end bond", bars.GetProperty("y").EnumerateArray().Last().GetString());
        Assert.Equal("104 bar gauge, 1.9 × working: weakest", bars.GetProperty("text").EnumerateArray().Last().GetString());
    }

    [Fact]
    public void Limits_in_bar_are_not_drawn_over_a_column_in_psi() =>
        Assert.Contains("bring the column to bar gauge", Assert.Throws<InvalidDesignException>(() => BurstChart.Draw(new Series("Burst",
            "psi", [1, 2, 3]))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_least_margin_of_nothing_is_refused(double least)
        => Assert.Throws<InvalidDesignException>(() => MarginChart.Draw(Time, Metres, least));

    [Theory]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void A_flutter_margin_of_one_is_refused(double required)
        => Assert.Throws<InvalidDesignException>(() => FlutterChart.Draw(Metres, Metres, Nine, required));

    [Fact]
    public void A_flutter_map_without_the_line_says_why()
    {
        Assert.Contains("every fin", FlutterChart.Draw(Metres, Metres, Nine with { Values = [.. Nine.Values.Select(v => v + 10)] },
            1.5).Remark, StringComparison.Ordinal);
        Assert.Contains("no fin", FlutterChart.Draw(Metres, Metres, Nine, 20).Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_needs_both_edges() => Assert.Throws<InvalidDesignException>(() => OverlayChart.Draw("t", Time, Metres, Time, Metres,
        lower: Metres));

    [Fact]
    public void The_highest_point_of_a_map_is_marked_where_it_is()
    {
        var callout = Assert.Single(ContourChart.Draw("t", Metres, Metres with { Values = [10, 20, 30] },
            Nine with { Values = [0, 0, 0, 0, 0, 7, 0, 0, 0] }).Callouts);
        Assert.Equal((3.0, 20.0), (callout.X, callout.Y));
        Assert.Contains("7 m", callout.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Energies_are_shown_on_one_linear_scale()
    {
        var chart = EnergyChart.Draw(Energy.FromJoules(250), Energy.FromKilojoules(31));
        Assert.Equal("Energy [kJ]", chart.X.Title);
        Assert.Equal(AxisScale.Linear, chart.X.Scale);
        Assert.Contains("never proof with air", chart.ToFigureJson(), StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => EnergyChart.Draw(Energy.FromJoules(-1), Energy.FromJoules(1)));
    }

    [Fact]
    public void An_ellipse_lies_along_its_bearing()
    {
        var (east, north) = new ScatterEllipse("90 %", 10, 20, 50, 5, 90).Outline();
        Assert.Equal(60, east.Max(), 6);
        Assert.Equal(25, north.Max(), 6);
    }
}
