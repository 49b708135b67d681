using NotebookKit.Charts.Theme;
using Plotly.NET;

namespace NotebookKit.Charts.Figures;

/// <summary>Axes, title, legend, limits and events of a chart in our theme.</summary>
internal static class LayoutBuilder
{
    private const string Font = "system-ui, -apple-system, 'Segoe UI', 'Helvetica Neue', 'DejaVu Sans', sans-serif";

    public static Layout Build(EngineeringChart chart)
    {
        var layout = new Layout();
        var legend = chart.HasLegend;
        layout.SetProperty("autosize", true);
        layout.SetProperty("height", 480);
        layout.SetProperty("margin", new Node { { "l", 72 }, { "r", chart.Right is null ? 28 : 76 },
            { "t", 46 + (legend ? 9 + (LegendSize.RowHeight * LegendSize.Rows(chart)) : 0) + (chart.Remark.Length > 0 ? 20 : 0) },
            { "b", 60 } });
        layout.SetProperty("font", new Node { { "family", Font }, { "size", 14 }, { "color", Palette.Ink } });
        layout.SetProperty("title", Heading(chart));
        layout.SetProperty("paper_bgcolor", Palette.Paper);
        layout.SetProperty("plot_bgcolor", Palette.Paper);
        layout.SetProperty("hovermode", "closest");
        layout.SetProperty("legend", new Node { { "orientation", "h" }, { "x", 0 }, { "y", 1.01 }, { "yanchor", "bottom" },
            { "font", new Node { { "size", 13 } } } });
        layout.SetProperty("showlegend", legend);
        layout.SetProperty("barmode", chart.Stacked ? "stack" : "group");
        layout.SetProperty("bargap", 0.28);
        if (chart.Up is { } up)
        {
            layout.SetProperty("height", 560);
            layout.SetProperty("margin", new Node { { "l", 12 }, { "r", 12 }, { "t", 76 }, { "b", 0 } });
            layout.SetProperty("scene", Scene(chart, up));
            return layout;
        }
        var extent = Extent.Of(chart);
        layout.SetProperty("xaxis", AxisNode(chart.X, extent.X));
        var left = AxisNode(chart.Y, extent.Y);
        if (chart.EqualScale) left.Add("scaleanchor", "x");
        layout.SetProperty("yaxis", left);
        if (chart.Right is { } right) layout.SetProperty("yaxis2", RightNode(right));
        layout.SetProperty("shapes", Shapes(chart).ToArray());
        layout.SetProperty("annotations", LabelBuilder.Build(chart, extent).ToArray());
        return layout;
    }

    private static Node Heading(EngineeringChart chart) => new()
    {
        { "text", "<b>" + Escape.Figure(chart.Title) + "</b>" }, { "x", 0 }, { "xref", "paper" }, { "xanchor", "left" },
        { "yref", "container" }, { "y", 1 }, { "yanchor", "top" }, { "pad", new Node { { "t", 12 } } },
            { "font", new Node { { "size", 17 } } },
    };

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
        if ((axis is { From: { } a, To: { } b } ? (a, b) : range) is var (from, to))
            node.Add("range", axis.Scale == AxisScale.Logarithmic ? new[] { Math.Log10(from), Math.Log10(to) } : new[] { from, to });
        return node;
    }

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

    private static Node RightNode(Axis axis)
    {
        var node = AxisNode(axis, twin: true);
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
