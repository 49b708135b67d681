using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Figures;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Pictures;

/// <summary>Draws the marks of a picture.</summary>
internal static class MarkPainter
{
    private const int Points = 500;

    /// <summary>The place of each mark in the palette.</summary>
    public static IReadOnlyList<int> Slots(EngineeringChart chart)
    {
        var free = 0;
        return [.. chart.Marks.Select(m => m.Slot ?? free++)];
    }

    public static void Paint(SvgSheet sheet, EngineeringChart chart, Mark mark, int slot, PlotFrame frame, double size)
    {
        var y = mark.OnRight ? frame.Right! : frame.Y;
        switch (mark)
        {
            case Curve curve: Line(sheet, curve, slot, frame.X, y); break;
            case Points points: Scatter(sheet, points, slot, frame.X, y); break;
            case Band band: Edges(sheet, band, slot, frame.X, y); break;
            case Bars bars: BarPainter.Paint(sheet, chart, bars, slot, frame, size); break;
            case Histogram histogram: BarPainter.Paint(sheet, histogram, slot, frame); break;
            case Field field: FieldPainter.Paint(sheet, field, frame, size); break;
            default: throw new NotSupportedException($"A picture can't show a {mark.GetType().Name}.");
        }
    }

    /// <summary>The sign of a mark in the legend.</summary>
    public static void Key(SvgSheet sheet, Mark mark, int slot, double x, double y)
    {
        var colour = Palette.At(slot);
        switch (mark)
        {
            case Points points: Shape(sheet, points.Shape, x + 14, y, 8, colour); break;
            case Bars or Histogram: sheet.Rectangle(x + 8, y - 6, 12, 12, colour, 0); break;
            case Band: sheet.Rectangle(x, y - 6, 28, 12, Palette.Tint(colour, 0.2), 0.8, Palette.Tint(colour, 0.5)); break;
            case Curve curve: sheet.Line(x, y, x + 28, y, Width(curve), colour, Dash(curve, slot)); break;
        }
    }

    private static void Line(SvgSheet sheet, Curve curve, int slot, PlotScale x, PlotScale y)
    {
        var (xs, ys) = Thinning.Keep(curve.X, curve.Y, Points);
        foreach (var run in Runs(xs, ys))
        {
            List<(double X, double Y)> line = [.. run.Select(p => (x.At(p.X), y.At(p.Y)))];
            if (curve.Filled)
            {
                var foot = Math.Clamp(y.At(0), y.Low, y.High);
                sheet.Path([(line[0].X, foot), .. line, (line[^1].X, foot)], closed: true, width: 0,
                    fill: Palette.Tint(Palette.At(slot), 0.14));
            }
            sheet.Path(line, closed: false, width: Width(curve), colour: Palette.At(slot), dash: Dash(curve, slot));
        }
    }

    private static void Edges(SvgSheet sheet, Band band, int slot, PlotScale x, PlotScale y)
    {
        var (lowX, low) = Thinning.Keep(band.X, band.Lower, Points);
        var (highX, high) = Thinning.Keep(band.X, band.Upper, Points);
        var lower = Runs(lowX, low).SelectMany(r => r).Select(p => (x.At(p.X), y.At(p.Y)));
        var upper = Runs(highX, high).SelectMany(r => r).Select(p => (x.At(p.X), y.At(p.Y)));
        sheet.Path(lower.Concat(upper.Reverse()), closed: true, width: 0.8, colour: Palette.Tint(Palette.At(slot), 0.5),
            fill: Palette.Tint(Palette.At(slot), 0.18));
    }

    private static void Scatter(SvgSheet sheet, Points points, int slot, PlotScale x, PlotScale y)
    {
        for (var i = 0; i < points.X.Count; i++)
        {
            if (!double.IsFinite(points.X[i] + points.Y[i])) continue;
            var (px, py) = (x.At(points.X[i]), y.At(points.Y[i]));
            Shape(sheet, points.Shape, px, py, points.Size, Palette.At(slot));
        }
    }

    private static void Shape(SvgSheet sheet, PointShape shape, double x, double y, double size, string colour)
    {
        var r = size / 2;
        switch (shape)
        {
            case PointShape.Ring: sheet.Circle(x, y, r, 1.2, "none", colour); break;
            case PointShape.Square: sheet.Rectangle(x - r, y - r, size, size, colour, 0); break;
            case PointShape.Diamond: sheet.Path([(x, y - r), (x + r, y), (x, y + r), (x - r, y)], closed: true, width: 0,
                fill: colour); break;
            case PointShape.Triangle: sheet.Path([(x, y - r), (x + r, y + r), (x - r, y + r)], closed: true, width: 0, fill: colour); break;
            case PointShape.Cross:
                sheet.Line(x - r, y - r, x + r, y + r, 1.2, colour);
                sheet.Line(x - r, y + r, x + r, y - r, 1.2, colour);
                break;
            default: sheet.Circle(x, y, r, 0, colour); break;
        }
    }

    /// <summary>Pieces of a line between its gaps.</summary>
    public static IEnumerable<List<(double X, double Y)>> Runs(double[] xs, double[] ys)
    {
        List<(double X, double Y)> run = [];
        for (var i = 0; i < xs.Length; i++)
        {
            if (double.IsFinite(xs[i] + ys[i]))
            {
                run.Add((xs[i], ys[i]));
                continue;
            }
            if (run.Count > 0) yield return run;
            run = [];
        }
        if (run.Count > 0) yield return run;
    }

    private static double Width(Curve curve) => curve.Stroke == Stroke.Reference ? 1.4 : 2.2;

    private static string Dash(Curve curve, int slot) => curve.Stroke switch
    {
        Stroke.Reference => "6 4",
        Stroke.Solid => "",
        _ when slot % Palette.Dashes.Count == 0 => "",
        _ => Palette.Dashes[slot % Palette.Dashes.Count].Replace("px", "", StringComparison.Ordinal).Replace(',', ' '),
    };
}
