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
        layout.SetProperty("autosize", true);
        layout.SetProperty("height", 480);
        layout.SetProperty("margin", new Node { { "l", 72 }, { "r", chart.Right is null ? 28 : 76 }, { "t", chart.Remark.Length > 0 ? 104 : 84 }, { "b", 60 } });
        layout.SetProperty("font", new Node { { "family", Font }, { "size", 14 }, { "color", Palette.Ink } });
        layout.SetProperty("title", Heading(chart));
        layout.SetProperty("paper_bgcolor", Palette.Paper);
        layout.SetProperty("plot_bgcolor", Palette.Paper);
        layout.SetProperty("hovermode", "closest");
        layout.SetProperty("legend", new Node { { "orientation", "h" }, { "x", 0 }, { "y", 1.01 }, { "yanchor", "bottom" }, { "font", new Node { { "size", 13 } } } });
        layout.SetProperty("barmode", chart.Stacked ? "stack" : "group");
        layout.SetProperty("bargap", 0.28);
        layout.SetProperty("xaxis", AxisNode(chart.X));
        var left = AxisNode(chart.Y);
        if (chart.EqualScale) left.Add("scaleanchor", "x");
        layout.SetProperty("yaxis", left);
        if (chart.Right is { } right) layout.SetProperty("yaxis2", RightNode(right));
        layout.SetProperty("shapes", Shapes(chart).ToArray());
        layout.SetProperty("annotations", Labels(chart).ToArray());
        return layout;
    }

    private static Node Heading(EngineeringChart chart)
    {
        var text = "<b>" + FigureText.Plain(chart.Title) + "</b>";
        if (chart.Remark.Length > 0) text += $"<br><span style=\"font-size:13px;color:{Palette.Quiet}\">{FigureText.Plain(chart.Remark)}</span>";
        return new Node { { "text", text }, { "x", 0 }, { "xref", "paper" }, { "xanchor", "left" }, { "y", 0.97 }, { "yanchor", "top" }, { "font", new Node { { "size", 17 } } } };
    }

    private static Node AxisNode(Axis axis)
    {
        var node = new Node
        {
            { "title", new Node { { "text", FigureText.Plain(axis.Title) }, { "standoff", 10 } } },
            { "showline", true }, { "linecolor", Palette.Frame }, { "linewidth", 1 }, { "mirror", true },
            { "ticks", axis.Scale == AxisScale.Categories ? "" : "outside" }, { "tickcolor", Palette.Frame },
            { "gridcolor", Palette.Grid }, { "zerolinecolor", Palette.Frame }, { "zerolinewidth", 1 },
            { "automargin", true }, { "exponentformat", "power" }, { "separatethousands", true },
        };
        if (axis.Scale == AxisScale.Logarithmic) node.Add("type", "log");
        if (axis.Scale == AxisScale.Categories) node.Add("type", "category");
        if (axis is { From: { } from, To: { } to })
            node.Add("range", axis.Scale == AxisScale.Logarithmic ? new[] { Math.Log10(from), Math.Log10(to) } : new[] { from, to });
        return node;
    }

    private static Node RightNode(Axis axis)
    {
        var node = AxisNode(axis);
        node.RemoveAll(p => p.Key is "mirror" or "gridcolor");
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
            yield return Rule(limit.Upright, limit.Value, limit.OnRight, limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet, "7px,4px", 1.6);
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

    private static IEnumerable<Node> Labels(EngineeringChart chart)
    {
        foreach (var span in chart.Spans.Where(s => s.Label.Length > 0))
        {
            yield return span.Across
                ? Label(span.Label, 1, Math.Max(span.From, span.To), "paper", "y", "right", "top", Palette.Quiet)
                : Label(span.Label, (span.From + span.To) / 2, 0, "x", "paper", "center", "bottom", Palette.Quiet);
        }
        foreach (var limit in chart.Limits)
        {
            var colour = limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet;
            yield return limit.Upright
                ? Upright(limit.Label, limit.Value, colour)
                : Label(limit.Label, limit.OnRight ? 0.995 : 0.005, limit.Value, "paper", limit.OnRight ? "y2" : "y", limit.OnRight ? "right" : "left", "bottom", colour);
        }
        foreach (var moment in chart.Events) yield return Upright(moment.Label, moment.At, Palette.Quiet);
        foreach (var callout in chart.Callouts)
        {
            yield return new Node
            {
                { "text", FigureText.Plain(callout.Text) }, { "x", callout.X }, { "y", callout.Y }, { "xref", "x" }, { "yref", "y" },
                { "showarrow", true }, { "arrowhead", 2 }, { "arrowsize", 1 }, { "arrowwidth", 1.2 }, { "arrowcolor", Palette.Ink }, { "ax", 40 }, { "ay", -36 },
                { "bgcolor", Palette.Tint(Palette.Paper, 0.85) }, { "bordercolor", Palette.Frame }, { "borderpad", 3 }, { "font", new Node { { "size", 13 } } },
            };
        }
    }

    private static Node Upright(string text, double at, string colour)
    {
        var node = Label(text, at, 1, "x", "paper", "right", "top", colour);
        node.Add("textangle", -90);
        return node;
    }

    private static Node Label(string text, double x, double y, string xref, string yref, string xanchor, string yanchor, string colour) => new()
    {
        { "text", FigureText.Plain(text) }, { "x", x }, { "y", y }, { "xref", xref }, { "yref", yref }, { "xanchor", xanchor }, { "yanchor", yanchor },
        { "showarrow", false }, { "font", new Node { { "size", 12 }, { "color", colour } } },
    };
}
