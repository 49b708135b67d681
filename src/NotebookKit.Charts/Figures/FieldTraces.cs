using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;
using Trace = Plotly.NET.Trace;

namespace NotebookKit.Charts.Figures;

/// <summary>A map as a contour trace in our colours, its lines labelled, its scale titled with the unit.</summary>
internal static class FieldTraces
{
    public static Trace Map(Field field)
    {
        var trace = new Trace("contour");
        trace.SetProperty("name", Escape.Figure(field.Z.Name));
        trace.SetProperty("showlegend", false);
        trace.SetProperty("x", field.X.Values.ToArray());
        trace.SetProperty("y", field.Y.Values.ToArray());
        trace.SetProperty("z", Enumerable.Range(0, field.Y.Count).Select(row => Enumerable.Range(0,
            field.X.Count).Select(column => field.At(column, row)).ToArray()).ToArray());
        trace.SetProperty("colorscale", Scale());
        trace.SetProperty("contours", new Node { { "coloring", "fill" }, { "showlabels", true },
            { "labelfont", new Node { { "size", 11 }, { "color", Palette.Ink } } } });
        trace.SetProperty("line", new Node { { "color", Palette.Tint(Palette.Ink, 0.45) }, { "width", 0.7 } });
        trace.SetProperty("ncontours", 14);
        trace.SetProperty("connectgaps", false);
        trace.SetProperty("colorbar", new Node
        {
            { "title", new Node { { "text", Escape.Figure(field.ScaleTitle) }, { "side", "right" },
                { "font", new Node { { "size", 13 } } } } },
            { "thickness", 16 },
                { "outlinewidth", 0 }, { "separatethousands", true },
        });
        trace.SetProperty(
            "hovertemplate",
            $"%{{z:.4~g}} {Escape.Figure(field.Z.Unit)} at %{{x:.4~g}} {Escape.Figure(field.X.Unit)}, %{{y:.4~g}} "
                + $"{Escape.Figure(field.Y.Unit)}<extra></extra>");
        return trace;
    }

    private static object[][] Scale()
    {
        var last = Palette.Map.Count - 1;
        return [.. Palette.Map.Select((colour, i) => new object[] { (double)i / last, colour })];
    }
}
