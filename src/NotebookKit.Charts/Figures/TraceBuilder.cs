using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;
using NotebookKit.Quantities;
using Trace = Plotly.NET.Trace;

namespace NotebookKit.Charts.Figures;

/// <summary>One mark of a chart as the traces that draw it.</summary>
internal static class TraceBuilder
{
    /// <summary>Most points that are drawn one by one.</summary>
    internal const int MostPoints = 5_000;

    public static IEnumerable<Trace> Build(EngineeringChart chart, Mark mark, int slot, LiveWords words) => mark switch
    {
        Curve curve => [Line(curve, slot)],
        Points points => [Scatter(points, slot, words)],
        Band band => Edges(band, slot),
        Bars bars => [Columns(chart, bars, slot)],
        Histogram histogram => [Classes(histogram, slot)],
        Field field => [FieldTraces.Map(field)],
        Path3D path => [Path(path, slot)],
        _ => throw new NotSupportedException($"A chart can't draw a {mark.GetType().Name}."),
    };

    private static Trace Line(Curve curve, int slot)
    {
        var (x, y) = Thinning.Keep(curve.X, curve.Y);
        var trace = Named("scatter", curve);
        trace.SetProperty("mode", "lines");
        trace.SetProperty("x", x);
        trace.SetProperty("y", y);
        trace.SetProperty("line", new Node
        {
            { "color", Palette.At(slot) },
            { "width", curve.Stroke == Stroke.Reference ? 1.4 : 2.4 },
            { "dash", curve.Stroke switch { Stroke.Reference => "6px,4px", Stroke.Solid => "solid",
                _ => Palette.Dashes[slot % Palette.Dashes.Count] } },
        });
        if (curve.Filled)
        {
            trace.SetProperty("fill", "tozeroy");
            trace.SetProperty("fillcolor", Palette.Tint(Palette.At(slot), 0.14));
        }
        trace.SetProperty("hovertemplate", Hover(curve.X, curve.Y));
        return trace;
    }

    private static Trace Scatter(Points points, int slot, LiveWords words)
    {
        var trace = Named("scatter", points);
        trace.SetProperty("mode", points.LabelsShown ? "markers+text" : "markers");
        trace.SetProperty("x", points.X.Values.ToArray());
        trace.SetProperty("y", points.Y.Values.ToArray());
        trace.SetProperty("marker", new Node
        {
            { "color", Palette.At(slot) },
            { "size", points.Size },
            { "symbol", Symbol(points.Shape) },
            { "line", new Node { { "color", points.Shape is PointShape.Ring or PointShape.Cross ? Palette.At(slot) : Palette.Paper },
                { "width", points.Size > 5 ? 1.0 : 0.0 } } },
        });
        if (points.Labels.Count > 0)
        {
            var names = Enumerable.Range(0, points.Labels.Count).Select(i => words.NameOf(points, i)).ToList();
            trace.SetProperty("hovertext", points.Labels.Select(Escape.Figure).ToArray());
            trace.SetProperty("text", names.Select(n => n?.Text ?? "").ToArray());
            trace.SetProperty("textposition", names.Select(n => n?.Side ?? "top center").ToArray());
            trace.SetProperty("cliponaxis", false);
            trace.SetProperty("textfont", new Node { { "size", 12 }, { "color", Palette.Quiet } });
        }
        trace.SetProperty("hovertemplate", (points.Labels.Count > 0 ? "%{hovertext}<br>" : "") + Hover(points.X, points.Y));
        return trace;
    }

    private static IEnumerable<Trace> Edges(Band band, int slot)
    {
        foreach (var upper in new[] { false, true })
        {
            var edge = upper ? band.Upper : band.Lower;
            var (x, y) = Thinning.Keep(band.X, edge);
            var trace = upper ? Named("scatter", band) : Named("scatter", band with { Name = "" });
            trace.SetProperty("mode", "lines");
            trace.SetProperty("x", x);
            trace.SetProperty("y", y);
            trace.SetProperty("line", new Node { { "color", Palette.Tint(Palette.At(slot), 0.5) }, { "width", 0.8 } });
            if (upper)
            {
                trace.SetProperty("fill", "tonexty");
                trace.SetProperty("fillcolor", Palette.Tint(Palette.At(slot), 0.18));
            }
            trace.SetProperty("hovertemplate", Escape.Figure(edge.Name) + ": " + Hover(band.X, edge));
            yield return trace;
        }
    }

    private static Trace Columns(EngineeringChart chart, Bars bars, int slot)
    {
        var lying = chart.Y.Scale == AxisScale.Categories;
        var trace = Named("bar", bars);
        trace.SetProperty(lying ? "y" : "x", bars.Names.Select(Escape.Figure).ToArray());
        trace.SetProperty(lying ? "x" : "y", bars.Values.Values.ToArray());
        trace.SetProperty("orientation", lying ? "h" : "v");
        trace.SetProperty("marker", new Node
        {
            { "color", bars.Slots.Count > 0 ? bars.Slots.Select(Palette.At).ToArray() : Palette.At(slot) },
            { "line", new Node { { "color", Palette.Paper }, { "width", 1 } } },
        });
        if (bars.Labels.Count > 0)
        {
            trace.SetProperty("text", bars.Labels.Select(Escape.Figure).ToArray());
            trace.SetProperty("textposition", "outside");
            trace.SetProperty("cliponaxis", false);
        }
        var unit = Escape.Figure(bars.Values.Unit);
        trace.SetProperty("hovertemplate", lying ? $"%{{y}}: %{{x:.4~g}} {unit}" : $"%{{x}}: %{{y:.4~g}} {unit}");
        return trace;
    }

    private static Trace Classes(Histogram histogram, int slot)
    {
        var (centres, width, shares) = histogram.Count();
        var trace = Named("bar", histogram);
        trace.SetProperty("x", centres);
        trace.SetProperty("y", shares);
        trace.SetProperty("width", width);
        trace.SetProperty("marker", new Node { { "color", Palette.At(slot) }, { "opacity", 0.75 },
            { "line", new Node { { "color", Palette.Paper }, { "width", 0.5 } } } });
        trace.SetProperty("hovertemplate", $"%{{x:.4~g}} {Escape.Figure(histogram.Samples.Unit)}: %{{y:.3~g}} %");
        return trace;
    }

    private static Trace Path(Path3D path, int slot)
    {
        var trace = Named("scatter3d", path);
        trace.SetProperty("mode", "lines");
        trace.SetProperty("x", path.X.Values.ToArray());
        trace.SetProperty("y", path.Y.Values.ToArray());
        trace.SetProperty("z", path.Z.Values.ToArray());
        trace.SetProperty("line", new Node { { "color", Palette.At(slot) }, { "width", path.Reference ? 2 : 5 },
            { "dash", path.Reference ? "dash" : "solid" } });
        var unit = Escape.Figure(path.Z.Unit);
        trace.SetProperty("hovertemplate", $"east %{{x:.4~g}}, north %{{y:.4~g}}, up %{{z:.4~g}} {unit}");
        return trace;
    }

    private static Trace Named(string type, Mark mark)
    {
        var trace = new Trace(type);
        trace.SetProperty("name", Escape.Figure(mark.Name));
        trace.SetProperty("showlegend", mark.Name.Length > 0);
        if (mark.OnRight) trace.SetProperty("yaxis", "y2");
        return trace;
    }

    private static string Hover(Series x, Series y) => $"%{{y:.4~g}} {Escape.Figure(y.Unit)} at %{{x:.4~g}} {Escape.Figure(x.Unit)}";

    private static string Symbol(PointShape shape) => shape switch
    {
        PointShape.Ring => "circle-open",
        PointShape.Square => "square",
        PointShape.Diamond => "diamond",
        PointShape.Triangle => "triangle-up",
        PointShape.Cross => "x-thin-open",
        _ => "circle",
    };
}
