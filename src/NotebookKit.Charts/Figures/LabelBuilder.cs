using NotebookKit.Charts.Notes;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Figures;

/// <summary>Words on a chart: names of limits, events and spans, and remarks.</summary>
internal static class LabelBuilder
{
    public static IEnumerable<Node> Build(EngineeringChart chart, Extent extent)
    {
        if (chart.Remark.Length > 0)
        {
            var remark = Label("", 0, 1, "paper", "paper", "left", "bottom", Palette.Quiet);
            remark["text"] = string.Join("<br>", LayoutBuilder.Remark(chart).Select(Escape.Figure));
            remark.Add("align", "left");
            remark.Add("name", EngineeringChart.RemarkName);
            remark.Add("yshift", 4);
            yield return remark;
        }
        foreach (var span in chart.Spans.Where(s => s.Label.Length > 0))
        {
            yield return span.Across
                ? Label(span.Label, 0.995, Math.Max(span.From, span.To), "paper", "y", "right", "top", Palette.Quiet)
                : Label(span.Label, (span.From + span.To) / 2, 0, "x", "paper", "center", "bottom", Palette.Quiet);
        }
        foreach (var limit in chart.Limits.Where(l => !l.IsVertical))
        {
            yield return Label(
                limit.Label, limit.OnRight ? 0.995 : 0.005, limit.Value, "paper", limit.OnRight ? "y2" : "y",
                    limit.OnRight ? "right" : "left", "bottom", Colour(limit));
        }
        foreach (var label in VerticalOnes(chart, extent)) yield return label;
        foreach (var callout in chart.Callouts) yield return Remark(callout, extent);
    }

    private static IEnumerable<Node> VerticalOnes(EngineeringChart chart, Extent extent)
    {
        var lying = chart.Y.Scale == AxisScale.Categories;
        var row = 0;
        List<(double At, string Text, string Colour)> upright = [];
        foreach (var limit in chart.Limits.Where(l => l.IsVertical))
        {
            // Over lying bars the names lie too, one below the other above the first bar.
            if (lying) yield return Label(" " + limit.Label, limit.Value, extent.Y!.Value.To - (0.42 * row++), "x", "y", "left", "top",
                Colour(limit));
            else upright.Add((limit.Value, limit.Label, Colour(limit)));
        }
        upright.AddRange(chart.Events.Select(e => (e.At, e.Label, Palette.Quiet)));
        var offsets = VerticalLabels.Offsets([.. upright.Select(u => (u.At, u.Text))], 0.025 * (extent.DataTo - extent.DataFrom));
        for (var i = 0; i < upright.Count; i++) yield return Vertical(upright[i].Text, upright[i].At, extent, upright[i].Colour,
            offsets[i]);
    }

    private static string Colour(LimitLine limit) => limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet;

    // Above its point and to the right, unless a map ends there.
    private static Node Remark(Callout callout, Extent extent) => new()
    {
        { "text", Escape.Figure(callout.Text) }, { "x", callout.X }, { "y", callout.Y }, { "xref", "x" }, { "yref", "y" },
        { "showarrow", true }, { "arrowhead", 2 }, { "arrowsize", 1 }, { "arrowwidth", 1.2 }, { "arrowcolor", Palette.Ink },
            { "ax", Late(extent.X, callout.X) ? -40 : 40 }, { "ay", Late(extent.Y, callout.Y) ? 36 : -36 },
        { "bgcolor", Palette.Tint(Palette.Paper, 0.85) }, { "bordercolor", Palette.Frame }, { "borderpad", 3 },
            { "font", new Node { { "size", 13 } } },
    };

    private static bool Late((double From, double To)? axis, double at) => axis is { } a && at > a.From + 0.88 * (a.To - a.From);

    // Left of its line, unless the frame is there.
    private static Node Vertical(string text, double at, Extent extent, string colour, double offsetPx)
    {
        var crowded = at - extent.DataFrom < 0.03 * (extent.DataTo - extent.DataFrom);
        var node = Label(text, at, 1, "x", "paper", crowded ? "left" : "right", "top", colour);
        node.Add("textangle", -90);
        // Over bars the letters need ground of their own.
        node.Add("bgcolor", Palette.Tint(Palette.Paper, 0.75));
        if (offsetPx > 0) node.Add("yshift", -offsetPx);
        return node;
    }

    private static Node Label(string text, double x, double y, string xref, string yref, string xanchor, string yanchor, string colour) =>
        new()
    {
        { "text", Escape.Figure(text) }, { "x", x }, { "y", y }, { "xref", xref }, { "yref", yref }, { "xanchor", xanchor },
            { "yanchor", yanchor },
        { "showarrow", false }, { "font", new Node { { "size", 12 }, { "color", colour } } },
    };
}
