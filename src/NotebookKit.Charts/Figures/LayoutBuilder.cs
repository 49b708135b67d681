using NotebookKit.Charts.Pictures;
using NotebookKit.Charts.Theme;
using Plotly.NET;

namespace NotebookKit.Charts.Figures;

/// <summary>Axes, title, legend, limits and events of a chart in our theme.</summary>
internal static class LayoutBuilder
{
    private const string Font = "system-ui, -apple-system, 'Segoe UI', 'Helvetica Neue', 'DejaVu Sans', sans-serif";

    // Lines that fit a phone fit every other screen as well [px].
    private const double Narrowest = 350;
    private const int TitleSize = 15, TitleStep = 20;

    /// <summary>From one line above the plot to the next [px].</summary>
    internal const int RemarkStep = 16;

    public static Layout Build(EngineeringChart chart, LiveWords words)
    {
        var layout = new Layout();
        var legend = chart.HasLegend;
        layout.SetProperty("autosize", true);
        // Heading and legend stand above and below the plot; their lines are added to the height, not taken from the plot.
        var top = 16 + (TitleStep * Title(chart).Count) + (RemarkStep * (Remark(chart).Count + Key(words).Count));
        layout.SetProperty("height", 400 + top + (LegendSize.RowHeight * LegendSize.Rows(chart)));
        layout.SetProperty("margin", new Node { { "l", 52 }, { "r", chart.Right is null ? 20 : 56 }, { "t", top }, { "b", 48 } });
        layout.SetProperty("font", new Node { { "family", Font }, { "size", 13 }, { "color", Palette.Ink } });
        layout.SetProperty("title", Heading(chart));
        layout.SetProperty("paper_bgcolor", Palette.Paper);
        layout.SetProperty("plot_bgcolor", Palette.Paper);
        layout.SetProperty("hovermode", "closest");
        layout.SetProperty("legend", new Node { { "orientation", "h" }, { "x", 0 }, { "xanchor", "left" }, { "y", 0 },
            { "yref", "container" }, { "yanchor", "bottom" }, { "font", new Node { { "size", 12 } } } });
        layout.SetProperty("showlegend", legend);
        layout.SetProperty("barmode", chart.Stacked ? "stack" : "group");
        layout.SetProperty("bargap", 0.28);
        if (chart.Up is { } up)
        {
            layout.SetProperty("height", 560);
            layout.SetProperty("margin", new Node { { "l", 12 }, { "r", 12 }, { "t", top }, { "b", 0 } });
            layout.SetProperty("scene", Scene(chart, up));
            return layout;
        }
        var extent = Extent.Of(chart);
        // Words that were placed need the ranges for which they were placed.
        layout.SetProperty("xaxis", AxisNode(chart.X, words.Frame?.X.Ends ?? Powers(chart.X, extent.X)));
        var left = AxisNode(chart.Y, words.Frame?.Y.Ends ?? Powers(chart.Y, extent.Y));
        if (chart.EqualScale) left.Add("scaleanchor", "x");
        layout.SetProperty("yaxis", left);
        if (chart.Right is { } right) layout.SetProperty("yaxis2", RightNode(right, words.Frame?.Right?.Ends));
        layout.SetProperty("shapes", Shapes(chart).ToArray());
        layout.SetProperty("annotations", LabelBuilder.Build(chart, words).ToArray());
        return layout;
    }

    private static Node Heading(EngineeringChart chart) => new()
    {
        { "text", string.Join("<br>", Title(chart).Select(l => $"<b>{Escape.Figure(l)}</b>")) }, { "x", 0 },
            { "xref", "container" }, { "xanchor", "left" }, { "yref", "container" }, { "y", 1 }, { "yanchor", "top" },
            { "pad", new Node { { "l", 8 }, { "t", 10 + ((Title(chart).Count - 1) * TitleStep / 2) } } },
            { "font", new Node { { "size", TitleSize } } },
    };

    /// <summary>Lines of the remark; they stand between title and plot.</summary>
    internal static IReadOnlyList<string> Remark(EngineeringChart chart) => TextLines.Break(chart.Remark, Narrowest, 12);

    /// <summary>Lines of the key to letters; they stand between remark and plot.</summary>
    internal static IReadOnlyList<string> Key(LiveWords words) => [.. words.Key.SelectMany(k =>
        TextLines.Break(k.Sign.Length > 0 ? $"{k.Sign}: {k.Text}" : k.Text, Narrowest, 12))];

    private static IReadOnlyList<string> Title(EngineeringChart chart) => TextLines.Break(chart.Title, Narrowest, TitleSize, bold: true);

    private static Node AxisNode(Axis axis, (double From, double To)? range = null, bool twin = false)
    {
        var node = new Node
        {
            { "title", new Node { { "text", Escape.Figure(axis.Title) }, { "standoff", 10 } } },
            { "showline", true }, { "linecolor", Palette.Frame }, { "linewidth", 1 }, { "mirror", !twin },
            { "ticks", axis.Scale == AxisScale.Categories ? "" : "outside" }, { "tickcolor", Palette.Frame },
            { "gridcolor", Palette.Grid }, { "zerolinecolor", Palette.Frame }, { "zerolinewidth", 1 },
            { "automargin", true }, { "exponentformat", "power" }, { "separatethousands", true },
        };
        if (axis.Scale == AxisScale.Logarithmic) node.Add("type", "log");
        if (axis.Scale == AxisScale.Categories) node.Add("type", "category");
        if (range is var (from, to)) node.Add("range", new[] { from, to });
        return node;
    }

    private static (double From, double To)? Powers(Axis axis, (double From, double To)? range) =>
        (axis is { From: { } a, To: { } b } ? (a, b) : range) is not var (from, to) ? null
            : axis.Scale == AxisScale.Logarithmic ? (Math.Log10(from), Math.Log10(to)) : (from, to);

    // Equal lengths on all three axes would flatten most flights into a needle: the box keeps its shape, and the axes carry the numbers.
    private static Node Scene(EngineeringChart chart, Axis up) => new()
    {
        { "xaxis", SpaceAxis(chart.X) }, { "yaxis", SpaceAxis(chart.Y) }, { "zaxis", SpaceAxis(up) },
        { "aspectmode", "manual" }, { "aspectratio", new Node { { "x", 1 }, { "y", 1 }, { "z", 1 } } },
        { "camera", new Node { { "eye", new Node { { "x", 1.55 }, { "y", -1.75 }, { "z", 0.75 } } } } },
    };

    private static Node SpaceAxis(Axis axis) => new()
    {
        { "title", new Node { { "text", Escape.Figure(axis.Title) }, { "font", new Node { { "size", 13 } } } } },
            { "tickfont", new Node { { "size", 11 } } }, { "nticks", 6 }, { "gridcolor", Palette.Grid }, { "linecolor", Palette.Frame },
            { "showbackground", false }, { "separatethousands", true },
    };

    private static Node RightNode(Axis axis, (double From, double To)? range)
    {
        var node = AxisNode(axis, range ?? Powers(axis, null), twin: true);
        node.Add("overlaying", "y");
        node.Add("side", "right");
        node.Add("showgrid", false);
        return node;
    }

    private static IEnumerable<Node> Shapes(EngineeringChart chart)
    {
        foreach (var span in chart.Spans)
        {
            yield return new Node
            {
                { "type", "rect" }, { "layer", "below" },
                { "xref", span.Across ? "paper" : "x" }, { "yref", span.Across ? "y" : "paper" },
                { "x0", span.Across ? 0 : span.From }, { "x1", span.Across ? 1 : span.To },
                { "y0", span.Across ? span.From : 0 }, { "y1", span.Across ? span.To : 1 },
                { "fillcolor", Palette.Tint(span.Forbidden ? Palette.Danger : Palette.Water, span.Forbidden ? 0.1 : 0.12) },
                { "line", new Node { { "width", 0 } } },
            };
        }
        foreach (var limit in chart.Limits)
        {
            yield return Rule(limit.IsVertical, limit.Value, limit.OnRight, limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet,
                "7px,4px", 1.6);
        }
        foreach (var moment in chart.Events) yield return Rule(true, moment.At, false, Palette.Frame, "2px,3px", 1.2);
    }

    private static Node Rule(bool upright, double at, bool onRight, string colour, string dash, double width) => new()
    {
        { "type", "line" },
        { "xref", upright ? "x" : "paper" }, { "yref", upright ? "paper" : onRight ? "y2" : "y" },
        { "x0", upright ? at : 0 }, { "x1", upright ? at : 1 }, { "y0", upright ? 0 : at }, { "y1", upright ? 1 : at },
        { "line", new Node { { "color", colour }, { "width", width }, { "dash", dash } } },
    };
}
