using NotebookKit.Charts.Marks;

namespace NotebookKit.Charts.Pictures;

/// <summary>The drawing area of a picture and its scales.</summary>
internal sealed record PlotFrame((double Left, double Top, double Right, double Bottom) Box, PlotScale X, PlotScale Y, PlotScale? Right,
    IReadOnlyList<string> NamesX, IReadOnlyList<string> NamesY)
{
    /// <summary>Room of the name beside lying bars [px].</summary>
    private const double NameRoom = 0.34;

    /// <summary>The drawing area of a picture below its heading: as wide as the words about it leave.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="form">Sizes of the picture.</param>
    /// <param name="top">Where the heading ends [px].</param>
    public static PlotFrame For(EngineeringChart chart, PictureForm form, double top)
    {
        var bars = chart.Marks.OfType<Bars>().FirstOrDefault();
        var lying = chart.Y.Scale == AxisScale.Categories;
        IReadOnlyList<string> namesX = chart.X.Scale == AxisScale.Categories ? bars?.Names ?? [] : [];
        IReadOnlyList<string> namesY = lying ? bars?.Names ?? [] : [];
        var field = chart.Marks.OfType<Field>().FirstOrDefault();
        var bottom = top + Height(chart, form, bars, lying);
        var y = namesY.Count > 0 ? Names(namesY.Count, bottom, top + ((form.Step + 2) * chart.Limits.Count(l => l.IsVertical)))
            : new PlotScale(chart.Y, Up(chart, right: false), bottom, top, exact: field is not null);
        var twin = chart.Right is { } axis ? new PlotScale(axis, Up(chart, right: true), bottom, top, exact: false) : null;
        var left = namesY.Count > 0
            ? 10 + namesY.SelectMany(n => TextLines.Break(n, NameRoom * form.Width, form.Text)).Max(l => TextLines.Width(l, form.Text))
            : Beside(chart.Y, y, form, bottom - top);
        var right = form.Width - (twin is not null ? Beside(chart.Right!, twin, form, bottom - top)
            : field is not null ? FieldPainter.RoomOf(field, bottom - top, form.Text) : 14);
        var box = (Left: left, Top: top, Right: right, Bottom: bottom);
        var x = namesX.Count > 0 ? Names(namesX.Count, box.Left, box.Right)
            : new PlotScale(chart.X, Across(chart, lying), box.Left, box.Right,
            exact: field is not null || (!lying && !chart.Marks.Any(m => m is Points or Histogram)));
        var frame = new PlotFrame(box, x, y, twin, namesX, namesY);
        return chart.EqualScale ? frame.Equal(chart) : frame;
    }

    /// <summary>Lines of an axis' title beside the drawing area.</summary>
    public static IReadOnlyList<string> TitleBeside(Axis axis, PictureForm form, double height) =>
        TextLines.Break(axis.Title, height, form.Text + 1);

    /// <summary>Lines of a name beside a lying bar.</summary>
    public static IReadOnlyList<string> NameLines(string name, PictureForm form) => TextLines.Break(name, NameRoom * form.Width, form.Text);

    private static double Height(EngineeringChart chart, PictureForm form, Bars? bars, bool lying)
    {
        if (!lying || bars is null || form.IsOneHeight) return form.PlotHeight;
        // Every bar is as high as the lines of its name.
        var lines = bars.Names.Max(n => NameLines(n, form).Count);
        var labels = bars.Labels.Count == 0 ? 1 : bars.Labels.Max(l => TextLines.Break(l, 0.2 * form.Width, form.Text).Count);
        var rows = bars.Names.Count * ((Math.Max(lines, labels) * form.Step) + 8);
        return Math.Max(0.6 * form.PlotHeight, rows + ((form.Step + 2) * chart.Limits.Count(l => l.IsVertical)));
    }

    private static double Beside(Axis axis, PlotScale scale, PictureForm form, double height) =>
        scale.Ticks().Select(t => TextLines.Width(PlotScale.Label(t), form.Text)).DefaultIfEmpty(0).Max() + 14
            + (1.25 * (form.Text + 1) * TitleBeside(axis, form, height).Count);

    /// <summary>Places and texts along the horizontal axis: as many as stand beside each other.</summary>
    /// <param name="size">Height of the letters [px].</param>
    public IReadOnlyList<(double At, string Text)> TicksX(double size)
    {
        if (NamesX.Count > 0) return [.. NamesX.Select((n, i) => (X.At(i), n))];
        for (var about = 8; about > 2; about--)
        {
            List<(double At, string Text)> ticks = [.. X.Ticks(about).Select(t => (X.At(t), PlotScale.Label(t))).OrderBy(t => t.Item1)];
            if (!ticks.Zip(ticks.Skip(1)).Any(Touch)) return ticks;
        }

        // On an axis of ratios the steps between powers give way.
        List<(double At, string Text)> kept = [];
        foreach (var tick in X.Ticks(3).Select(t => (X.At(t), PlotScale.Label(t))).OrderBy(t => t.Item1))
            if (kept.Count == 0 || !Touch((kept[^1], tick))) kept.Add(tick);
        return kept;

        bool Touch(((double At, string Text) First, (double At, string Text) Second) pair) => pair.Second.At - pair.First.At
            < ((TextLines.Width(pair.First.Text, size) + TextLines.Width(pair.Second.Text, size)) / 2) + 6;
    }

    /// <summary>Places and texts of the numbers along the vertical axis.</summary>
    public IEnumerable<(double At, string Text)> TicksY() => NamesY.Count > 0 ? [] : Y.Ticks().Select(t => (Y.At(t), PlotScale.Label(t)));

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
