using NotebookKit.Charts.Marks;

namespace NotebookKit.Charts.Pictures;

/// <summary>The lines of a picture, as places on it: what no label may lie over.</summary>
internal static class PictureInk
{
    /// <summary>Every line of curves, edges, points, level lines, limits and events.</summary>
    public static IEnumerable<IReadOnlyList<(double X, double Y)>> Of(EngineeringChart chart, PlotFrame frame)
    {
        var (left, top, right, bottom) = frame.Box;
        foreach (var mark in chart.Marks)
        {
            var y = mark.OnRight ? frame.Right! : frame.Y;
            foreach (var line in Of(mark, frame, y)) yield return line;
        }
        foreach (var limit in chart.Limits)
        {
            var at = limit.IsVertical ? frame.X.At(limit.Value) : (limit.OnRight ? frame.Right! : frame.Y).At(limit.Value);
            yield return limit.IsVertical ? [(at, top), (at, bottom)] : [(left, at), (right, at)];
        }
        foreach (var moment in chart.Events) yield return [(frame.X.At(moment.At), top), (frame.X.At(moment.At), bottom)];
        foreach (var callout in chart.Callouts) yield return Dot(frame.X.At(callout.X), frame.Y.At(callout.Y), 3);
    }

    /// <summary>Where words stand that aren't moved, and bars, over which no other word is put.</summary>
    public static IEnumerable<LabelBox> Taken(EngineeringChart chart, PlotFrame frame, double size) => chart.Marks.OfType<Bars>()
        .SelectMany(b => BarPainter.Boxes(chart, b, frame).Select(p => p.Box)
            .Concat(BarPainter.Labels(chart, b, frame, size).Select(l => l.Box)))
        .Concat(chart.Marks.OfType<Field>().SelectMany(f => FieldPainter.NamesOf(f, frame, size)));

    private static IEnumerable<IReadOnlyList<(double X, double Y)>> Of(Mark mark, PlotFrame frame, PlotScale y) => mark switch
    {
        Curve curve => Lines(curve.X.Values, curve.Y.Values, frame, y),
        Band band => Lines(band.X.Values, band.Lower.Values, frame, y).Concat(Lines(band.X.Values, band.Upper.Values, frame, y)),
        Points points => Enumerable.Range(0, points.X.Count).Where(i => double.IsFinite(points.X[i] + points.Y[i]))
            .Select(i => Dot(frame.X.At(points.X[i]), y.At(points.Y[i]), points.Size / 2)),
        Histogram histogram => Tops(histogram, frame),
        Field field => FieldPainter.Levels(field, frame).SelectMany(l => { var (xs, ys) = LevelLine.Of(field, l);
            return Lines(xs.Values, ys.Values, frame, y); }),
        _ => [],
    };

    private static IEnumerable<IReadOnlyList<(double X, double Y)>> Lines(IReadOnlyList<double> xs, IReadOnlyList<double> ys,
        PlotFrame frame, PlotScale y) =>
        MarkPainter.Runs([.. xs], [.. ys]).Select(r => (IReadOnlyList<(double X, double Y)>)[.. r.Select(p =>
            (frame.X.At(p.X), y.At(p.Y)))]);

    private static IEnumerable<IReadOnlyList<(double X, double Y)>> Tops(Histogram histogram, PlotFrame frame)
    {
        var (centres, width, shares) = histogram.Count();
        return centres.Zip(shares, (c, s) => (IReadOnlyList<(double X, double Y)>)
            [(frame.X.At(c - (width / 2)), frame.Y.At(s)), (frame.X.At(c + (width / 2)), frame.Y.At(s))]);
    }

    private static IReadOnlyList<(double X, double Y)> Dot(double x, double y, double r) =>
        [(x - r, y - r), (x + r, y + r), (x - r, y + r), (x + r, y - r)];
}
