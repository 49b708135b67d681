using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Pictures;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Figures;

/// <summary>Words on a live figure: names of limits, events and spans, and remarks, each where <see cref="LiveWords"/> puts it.</summary>
internal static class LabelBuilder
{
    public static IEnumerable<Node> Build(EngineeringChart chart, LiveWords words)
    {
        var key = LayoutBuilder.Key(words);
        if (chart.Remark.Length > 0)
            yield return Above(EngineeringChart.RemarkName, LayoutBuilder.Remark(chart), 4 + (LayoutBuilder.RemarkStep * key.Count));
        if (key.Count > 0) yield return Above(EngineeringChart.KeyName, key, 4);
        if (words.Frame is not { } frame) yield break;
        foreach (var word in words.Words.Where(w => w.Names is null))
        {
            var node = Placed(word, frame);
            // Over the colours of a map or of bars the letters need ground of their own.
            if (chart.Marks.Any(m => m is Field or Bars or Histogram)) node.Add("bgcolor", Palette.Tint(Palette.Paper, 0.85));
            yield return node;
        }
    }

    /// <summary>The lines of a word as a figure takes them.</summary>
    public static string Text(PlacedWord word)
    {
        var text = string.Join("<br>", word.Lines.Select(Escape.Figure));
        return word.StandsFor.Length > 0 ? $"<b>{text}</b>" : text;
    }

    private static Node Above(string name, IReadOnlyList<string> lines, int shift) => new()
    {
        { "text", string.Join("<br>", lines.Select(Escape.Figure)) }, { "name", name }, { "x", 0.0 }, { "y", 1.0 }, { "xref", "paper" },
        { "yref", "paper" }, { "xanchor", "left" }, { "yanchor", "bottom" }, { "yshift", shift }, { "align", "left" },
        { "showarrow", false }, { "font", Letters(Palette.Quiet) },
    };

    private static Node Placed(PlacedWord word, PlotFrame frame)
    {
        var (x, y) = (frame.X.From(At(word.Across, word.Box.Left, word.Box.Right)), frame.Y.From(At(word.Down, word.Box.Top,
            word.Box.Bottom)));
        var node = new Node { { "text", Text(word) }, { "xref", "x" }, { "yref", "y" }, { "borderpad", 0 },
            { "font", Letters(word.Colour) } };
        if (word.StandsFor.Length > 0) node.Add("hovertext", Escape.Figure(word.StandsFor));
        if (word.Point is { } point)
        {
            // The words stand where the arrow begins, in the axes' own values: so they keep their place beside the curves at every size.
            foreach (var (name, value) in new[] { ("x", frame.X.From(point.X)), ("y", frame.Y.From(point.Y)), ("ax", x), ("ay", y) })
                node.Add(name, value);
            foreach (var (name, value) in new[] { ("axref", "x"), ("ayref", "y"), ("arrowcolor", Palette.Ink) }) node.Add(name, value);
            foreach (var (name, value) in new[] { ("arrowhead", 6.0), ("arrowsize", 0.8), ("arrowwidth", 1.2) }) node.Add(name, value);
            node.Add("showarrow", true);
            return node;
        }
        node.Add("x", x);
        node.Add("y", y);
        node.Add("showarrow", false);
        node.Add("xanchor", word.Across switch { Edge.Low => "left", Edge.High => "right", _ => "center" });
        node.Add("yanchor", word.Down switch { Edge.Low => "top", Edge.High => "bottom", _ => "middle" });
        if (word.Upright) node.Add("textangle", -90);
        return node;
    }

    private static double At(Edge edge, double low, double high) => edge switch { Edge.Low => low, Edge.High => high,
        _ => (low + high) / 2 };

    private static Node Letters(string colour) => new() { { "size", 12 }, { "color", colour } };
}
