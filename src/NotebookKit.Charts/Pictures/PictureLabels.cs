using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Pictures;

/// <summary>
/// Words on a picture: names of limits, events, spans and points, and remarks. Each goes to the first of its places that lies over no line
/// and no other word; one that finds none becomes a letter there and stands in full below the legend.
/// </summary>
internal sealed class PictureLabels
{
    private const int MostLettered = 12;

    private readonly EngineeringChart _chart;
    private readonly PlotFrame _frame;
    private readonly LabelPlacer _placer;
    private readonly double _size;
    private readonly List<PlacedWord> _words = [];
    private readonly List<(string Sign, string Text)> _key = [];

    private PictureLabels(EngineeringChart chart, PlotFrame frame, double size)
    {
        (_chart, _frame, _size) = (chart, frame, size);
        _placer = new LabelPlacer(new(frame.Box.Left + 1, frame.Box.Top + 1, frame.Box.Right - 1, frame.Box.Bottom - 1));
        foreach (var box in PictureInk.Taken(chart, frame, size)) _placer.Take(box);
        foreach (var line in PictureInk.Of(chart, frame)) _placer.Ink(line);
    }

    /// <summary>Finds the places; gives the words in theirs, and those that found none with the letters that stand for them.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="frame">Its scales.</param>
    /// <param name="size">Height of the letters [px].</param>
    public static (IReadOnlyList<PlacedWord> Words, IReadOnlyList<(string Sign, string Text)> Key) Place(EngineeringChart chart,
        PlotFrame frame, double size)
    {
        var labels = new PictureLabels(chart, frame, size);
        labels.Write();
        return (labels._words, labels._key);
    }

    private void Write()
    {
        var (left, top, right, bottom) = _frame.Box;
        foreach (var callout in _chart.Callouts) Remark(callout);
        foreach (var limit in _chart.Limits.Where(l => !l.IsVertical && l.Label.Length > 0))
            Lying(limit.Label, limit.Value, (limit.OnRight ? _frame.Right! : _frame.Y).At(limit.Value), limit.OnRight, Colour(limit));
        foreach (var limit in _chart.Limits.Where(l => l.IsVertical && l.Label.Length > 0))
            Standing(limit.Label, limit.Value, _frame.X.At(limit.Value), Colour(limit), _frame.NamesY.Count > 0);
        foreach (var moment in _chart.Events.Where(e => e.Label.Length > 0))
            Standing(moment.Label, moment.At, _frame.X.At(moment.At), Palette.Quiet, lying: false);
        foreach (var span in _chart.Spans.Where(s => s.Label.Length > 0))
        {
            var (a, b) = span.Across ? (_frame.Y.At(span.From), _frame.Y.At(span.To)) : (_frame.X.At(span.From), _frame.X.At(span.To));
            var (low, high) = (Math.Min(a, b), Math.Max(a, b));
            Word(span.Label, Palette.Quiet, (w, h) => span.Across
                ? Steps(right - w - 3, left + 3).SelectMany(x => Steps(low + 2, high - h - 2).Select(y => (x, y)))
                : Steps(bottom - h - 3, top + 3).SelectMany(y => Around(((low + high) / 2) - (w / 2), Math.Max(4, (high - low) / 2))
                    .Select(x => (x, y))));
        }
        foreach (var points in _chart.Marks.OfType<Points>()) Names(points);
    }

    private void Lying(string text, double value, double at, bool fromRight, string colour)
    {
        var (left, _, right, _) = _frame.Box;
        if (Word(text, colour, (w, h) => (fromRight ? Steps(right - w - 4, left + 4) : Steps(left + 4, right - w - 4))
            .SelectMany(x => new[] { (x, at - h - 3), (x, at + 3) }), Where(value)) is not { } box) return;
        _words[^1] = _words[^1] with { Across = fromRight ? Edge.High : Edge.Low, Down = box.Top < at ? Edge.High : Edge.Low };
    }

    private void Standing(string text, double value, double at, string colour, bool lying)
    {
        var (_, top, _, bottom) = _frame.Box;
        var (w, h) = (TextLines.Width(text, _size), 1.25 * _size);
        var tries = lying
            ? Steps(top + 2, bottom - h - 2).SelectMany(y => new[] { new LabelBox(at + 5, y, at + 5 + w, y + h),
                new LabelBox(at - 5 - w, y, at - 5, y + h) })
            : Steps(top + 3, bottom - w - 3).SelectMany(y => new[] { new LabelBox(at - 3 - h, y, at - 3, y + w),
                new LabelBox(at + 3, y, at + 3 + h, y + w) });
        if (_placer.Place(tries) is not { } box)
        {
            Letter(text, colour, (lw, lh) => Steps(top + 3, bottom - lh - 3).SelectMany(y => new[] { (at - 3 - lw, y), (at + 3, y) }),
                Where(value));
            return;
        }
        _words.Add(new PlacedWord([text], box, colour) { Upright = !lying, Across = lying || box.Left > at ? Edge.Low : Edge.High,
            Down = lying ? Edge.Middle : Edge.Low });
    }

    private void Remark(Callout callout)
    {
        var (x, y) = (_frame.X.At(callout.X), _frame.Y.At(callout.Y));
        if (Word(callout.Text, Palette.Ink, (w, h) => Rings(x, y, w, h)) is not { } box) return;
        // From the point to the nearest place on the words' edge.
        var (toX, toY) = (Math.Clamp(x, box.Left, box.Right), Math.Clamp(y, box.Top, box.Bottom));
        _words[^1] = _words[^1] with { Point = (x, y) };
        _placer.Ink([(x, y), (toX, toY)]);
    }

    private void Names(Points points)
    {
        if (!points.LabelsShown || points.Labels.Count == 0) return;
        var y = points.OnRight ? _frame.Right! : _frame.Y;
        for (var i = 0; i < points.X.Count; i++)
        {
            if (!double.IsFinite(points.X[i] + points.Y[i]) || points.Labels[i].Length == 0) continue;
            var (px, py) = (_frame.X.At(points.X[i]), y.At(points.Y[i]));
            var near = Near(px, py, points.Size);
            var box = points.X.Count <= MostLettered ? Word(points.Labels[i], Palette.Quiet, near) : Plain(points.Labels[i], Palette.Quiet,
                near);
            if (box is null) continue;
            _words[^1] = _words[^1] with { Names = (points, i), Across = Side(box.Value.Left, box.Value.Right, px),
                Down = Side(box.Value.Top, box.Value.Bottom, py) };
        }
    }

    // A word in its place, or a letter that stands for it.
    private LabelBox? Word(string text, string colour, Func<double, double, IEnumerable<(double X, double Y)>> tries,
        string where = "") => Plain(text, colour, tries) ?? Letter(text, colour, tries, where);

    private LabelBox? Plain(string text, string colour, Func<double, double, IEnumerable<(double X, double Y)>> tries)
    {
        var widest = _frame.Box.Right - _frame.Box.Left - 10;
        foreach (var width in new[] { widest, Math.Min(widest, 0.45 * TextLines.Width(text, _size) + (4 * _size)) })
        {
            var lines = TextLines.Break(text, width, _size);
            if (lines.Count == 0) return null;
            var (w, h) = (lines.Max(l => TextLines.Width(l, _size)), 1.25 * _size * lines.Count);
            if (_placer.Place(tries(w, h).Select(t => new LabelBox(t.X, t.Y, t.X + w, t.Y + h))) is not { } box) continue;
            _words.Add(new PlacedWord(lines, box, colour));
            return box;
        }
        return null;
    }

    private LabelBox? Letter(string text, string colour, Func<double, double, IEnumerable<(double X, double Y)>> tries,
        string where = "")
    {
        var sign = ((char)('A' + (_key.Count % 26))).ToString();
        var (w, h) = (_size, 1.1 * _size);
        var box = _placer.Place(tries(w, h).Select(t => new LabelBox(t.X, t.Y, t.X + w, t.Y + h)));
        _key.Add(box is null ? ("", where + text) : (sign, text));
        if (box is { } at) _words.Add(new PlacedWord([sign], at, colour) { StandsFor = text });
        return box;
    }

    private static Func<double, double, IEnumerable<(double X, double Y)>> Near(double x, double y, double size) => (w, h) =>
    {
        var r = (size / 2) + 3;
        (double X, double Y)[] close = [(x - (w / 2), y - r - h), (x + r, y - (h / 2)), (x - r - w, y - (h / 2)), (x - (w / 2), y + r),
            (x + r, y - r - h), (x - r - w, y - r - h), (x + r, y + r), (x - r - w, y + r)];
        return close;
    };

    private static IEnumerable<(double X, double Y)> Rings(double x, double y, double w, double h)
    {
        for (var reach = 16.0; reach <= 150; reach += 8)
        {
            // To the right and above first.
            foreach (var turn in new[] { 45, 60, 30, 90, 0, 120, 135, 150, 180, -45, -30, -60, -90, -120, -135, -150 })
            {
                var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
                yield return (x + (reach * cos) + ((cos - 1) * w / 2), y - (reach * sin) - ((sin + 1) * h / 2));
            }
        }
    }

    private static Edge Side(double low, double high, double at) => low > at ? Edge.Low : high < at ? Edge.High : Edge.Middle;

    private static IEnumerable<double> Steps(double from, double to)
    {
        var count = (int)(Math.Abs(to - from) / 5);
        for (var i = 0; i <= count; i++) yield return from + (Math.Sign(to - from) * 5.0 * i);
    }

    private static IEnumerable<double> Around(double middle, double reach)
    {
        yield return middle;
        for (var d = 5.0; d <= reach; d += 5)
        {
            yield return middle - d;
            yield return middle + d;
        }
    }

    // A line without room for so much as a letter is named by its place.
    private static string Where(double value) => $"line at {PlotScale.Label(value)}: ";

    private static string Colour(LimitLine limit) => limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet;
}
