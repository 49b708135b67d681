using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;

namespace NotebookKit.Charts.Pictures;

/// <summary>The drawing area of a picture and its scales.</summary>
internal sealed record PlotFrame((double Left, double Top, double Right, double Bottom) Box, PlotScale X, PlotScale Y, PlotScale? Right,
    IReadOnlyList<string> NamesX, IReadOnlyList<string> NamesY)
{
    public static PlotFrame For(EngineeringChart chart, double width, double height)
    {
        var bars = chart.Marks.OfType<Bars>().FirstOrDefault();
        var lying = chart.Y.Scale == AxisScale.Categories;
        IReadOnlyList<string> namesX = chart.X.Scale == AxisScale.Categories ? bars?.Names ?? [] : [];
        IReadOnlyList<string> namesY = lying ? bars?.Names ?? [] : [];
        var left = namesY.Count > 0 ? Math.Min(260, 40 + namesY.Max(n => SvgSheet.WidthOf(n, 13))) : 78;
        var field = chart.Marks.OfType<Field>().FirstOrDefault();
        var right = width - (chart.Right is not null ? 78 : field is not null ? 130 : 26);
        var box = (Left: left, Top: 42.0 + (chart.HasLegend ? 26 : 0) + (chart.Remark.Length > 0 ? 18 : 0), Right: right,
            Bottom: height - 58);
        var x = namesX.Count > 0 ? Names(namesX.Count, box.Left, box.Right)
            : new PlotScale(chart.X, Across(chart, lying), box.Left, box.Right,
            exact: !lying && !chart.Marks.Any(m => m is Points or Histogram));
        var y = namesY.Count > 0 ? Names(namesY.Count, box.Bottom, box.Top + (17 * chart.Limits.Count(l => l.IsVertical)))
            : new PlotScale(chart.Y, Up(chart, right: false), box.Bottom, box.Top, exact: field is not null);
        var twin = chart.Right is { } axis ? new PlotScale(axis, Up(chart, right: true), box.Bottom, box.Top, exact: false) : null;
        var frame = new PlotFrame(box, x, y, twin, namesX, namesY);
        return chart.EqualScale ? frame.Equal(chart) : frame;
    }

    /// <summary>Places and texts along the horizontal axis.</summary>
    public IEnumerable<(double At, string Text)> TicksX() =>
        NamesX.Count > 0 ? NamesX.Select((n, i) => (X.At(i), n)) : X.Ticks(8).Select(t => (X.At(t), PlotScale.Label(t)));

    /// <summary>Places and texts along the vertical axis.</summary>
    public IEnumerable<(double At, string Text)> TicksY() =>
        NamesY.Count > 0 ? NamesY.Select((n, i) => (Y.At(i), n)) : Y.Ticks().Select(t => (Y.At(t), PlotScale.Label(t)));

    private static PlotScale Names(int count, double start, double end)
        => new(new Axis("place", "-").Over(-0.6, count - 0.4), [0.0], start, end, exact: true);

    private static IEnumerable<double> Across(EngineeringChart chart, bool lying)
    {
        if (!lying) return chart.Marks.SelectMany(m => m.Horizontal).SelectMany(s => s.Values).Concat(chart.Limits.Where(l =>
            l.IsVertical).Select(l => l.Value)).Concat(chart.Events.Select(e => e.At));
        var most = chart.Marks.OfType<Bars>().SelectMany(b => b.Values.Values).Concat(chart.Limits.Select(l =>
            l.Value)).Where(double.IsFinite).DefaultIfEmpty(1).Max();
        return [0, most * (chart.Marks.OfType<Bars>().Any(b => b.Labels.Count > 0) ? 1.5 : 1)];
    }

    private static IEnumerable<double> Up(EngineeringChart chart, bool right)
    {
        var marks = chart.Marks.Where(m => m.OnRight == right).ToList();
        var values = marks.Where(m => m is not Bars).SelectMany(m => m.Vertical).SelectMany(s => s.Values)
            .Concat(chart.Limits.Where(l => !l.IsVertical && l.OnRight == right).Select(l => l.Value))
            .Concat(right ? [] : chart.Spans.Where(s => s.Across).SelectMany(s => new[] { s.From, s.To }));
        if (marks.OfType<Curve>().Any(c => c.Filled)) values = values.Append(0);
        if (marks.OfType<Histogram>().Any()) values = values.Concat(marks.OfType<Histogram>().SelectMany(h => h.Count().Shares)).Append(0);
        var bars = marks.OfType<Bars>().ToList();
        if (bars.Count == 0) return values;
        var tops = chart.Stacked ? Enumerable.Range(0, bars[0].Values.Count).Select(i => bars.Sum(b => b.Values[i]))
            : bars.SelectMany(b => b.Values.Values);
        return values.Concat(tops).Append(0);
    }

    // One unit becomes as long on both axes: the roomier one shows more than its data.
    private PlotFrame Equal(EngineeringChart chart)
    {
        var xs = chart.Marks.SelectMany(m => m.Horizontal).SelectMany(s => s.Values).Where(double.IsFinite).ToList();
        var ys = chart.Marks.SelectMany(m => m.Vertical).SelectMany(s => s.Values).Where(double.IsFinite).ToList();
        var (spanX, spanY) = (1.08 * Math.Max(xs.Max() - xs.Min(), 1e-9), 1.08 * Math.Max(ys.Max() - ys.Min(), 1e-9));
        var perUnit = Math.Min((Box.Right - Box.Left) / spanX, (Box.Bottom - Box.Top) / spanY);
        var (halfX, halfY) = ((Box.Right - Box.Left) / perUnit / 2, (Box.Bottom - Box.Top) / perUnit / 2);
        var (midX, midY) = ((xs.Max() + xs.Min()) / 2, (ys.Max() + ys.Min()) / 2);
        return this with
        {
            X = new PlotScale(chart.X.Over(midX - halfX, midX + halfX), [0.0], Box.Left, Box.Right, exact: true),
            Y = new PlotScale(chart.Y.Over(midY - halfY, midY + halfY), [0.0], Box.Bottom, Box.Top, exact: true),
        };
    }
}
