using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Figures;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Charts.Theme;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Pictures;

/// <summary>A chart as a still picture in SVG, for pages and front-ends that run no script.</summary>
internal sealed class ChartPicture
{
    private const double Width = 900;
    private const double Height = 480;
    private const double TextSize = 13;
    private const int MostPoints = 1_500;

    private readonly EngineeringChart _chart;
    private readonly SvgSheet _sheet = new();
    private readonly PlotFrame _frame;

    private ChartPicture(EngineeringChart chart)
    {
        _chart = chart;
        _frame = PlotFrame.For(chart, Width, Height);
    }

    public static string Draw(EngineeringChart chart)
    {
        if (chart.Up is not null) return Draw(FromTheSide(chart));
        chart = chart with { Marks = [.. chart.Marks.Select(m => m is Points points ? points.AtMost(MostPoints) : m)] };
        var picture = new ChartPicture(chart);
        picture.Paint();
        return picture._sheet.Finish(Width, Height, chart.Title, chart.ToString(), unit: "");
    }

    private void Paint()
    {
        var (left, top, right, bottom) = _frame.Box;
        _sheet.Text(left, 26, _chart.Title, size: 17, bold: true);
        if (_chart.Remark.Length > 0) _sheet.Text(left, 44, _chart.Remark, size: TextSize, colour: Palette.Quiet);
        Grid();
        _sheet.Clip(left, top, right - left, bottom - top);
        foreach (var span in _chart.Spans) Span(span);
        var slots = MarkPainter.Slots(_chart);
        for (var i = 0; i < _chart.Marks.Count; i++) MarkPainter.Paint(_sheet, _chart, _chart.Marks[i], slots[i], _frame);
        foreach (var limit in _chart.Limits)
            Rule(limit.IsVertical, limit.Value, limit.OnRight, limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet, "7 4", 1.6);
        foreach (var moment in _chart.Events) Rule(true, moment.At, false, Palette.Frame, "2 3", 1.2);
        _sheet.Close();
        _sheet.Rectangle(left, top, right - left, bottom - top, "none", 1, Palette.Frame);
        Labels();
        Legend(slots);
    }

    private void Grid()
    {
        var (left, top, right, bottom) = _frame.Box;
        foreach (var (at, text) in _frame.TicksX())
        {
            _sheet.Line(at, top, at, bottom, 1, Palette.Grid);
            _sheet.Line(at, bottom, at, bottom + 5, 1, Palette.Frame);
            _sheet.Text(at, bottom + 19, text, "middle", TextSize);
        }
        foreach (var (at, text) in _frame.TicksY())
        {
            _sheet.Line(left, at, right, at, 1, Palette.Grid);
            _sheet.Line(left - 5, at, left, at, 1, Palette.Frame);
            _sheet.Text(left - 8, at + 4.5, text, "end", TextSize);
        }
        _sheet.Text((left + right) / 2, Height - 14, _chart.X.Title, "middle", 14);
        _sheet.Text(18, (top + bottom) / 2, _chart.Y.Title, "middle", 14, upright: true);
        if (_chart.Right is not { } axis || _frame.Right is not { } scale) return;
        foreach (var tick in scale.Ticks())
        {
            _sheet.Line(right, scale.At(tick), right + 5, scale.At(tick), 1, Palette.Frame);
            _sheet.Text(right + 8, scale.At(tick) + 4.5, PlotScale.Label(tick), "start", TextSize);
        }
        _sheet.Text(Width - 10, (top + bottom) / 2, axis.Title, "middle", 14, upright: true);
    }

    private void Span(ShadedSpan span)
    {
        var (left, top, right, bottom) = _frame.Box;
        var fill = Palette.Tint(span.Forbidden ? Palette.Danger : Palette.Water, span.Forbidden ? 0.1 : 0.12);
        var (a, b) = span.Across ? (_frame.Y.At(span.From), _frame.Y.At(span.To)) : (_frame.X.At(span.From), _frame.X.At(span.To));
        if (span.Across) _sheet.Rectangle(left, Math.Min(a, b), right - left, Math.Abs(b - a), fill, 0);
        else _sheet.Rectangle(Math.Min(a, b), top, Math.Abs(b - a), bottom - top, fill, 0);
    }

    private void Rule(bool upright, double value, bool onRight, string colour, string dash, double width)
    {
        var (left, top, right, bottom) = _frame.Box;
        var at = upright ? _frame.X.At(value) : (onRight ? _frame.Right! : _frame.Y).At(value);
        if (upright) _sheet.Line(at, top, at, bottom, width, colour, dash);
        else _sheet.Line(left, at, right, at, width, colour, dash);
    }

    private void Labels()
    {
        var (left, top, right, _) = _frame.Box;
        foreach (var span in _chart.Spans.Where(s => s.Label.Length > 0))
        {
            if (span.Across) _sheet.Text(right - 4, _frame.Y.At(Math.Max(span.From, span.To)) + 13, span.Label, "end", 12,
                colour: Palette.Quiet);
            else _sheet.Text(_frame.X.At((span.From + span.To) / 2), _frame.Box.Bottom - 6, span.Label, "middle", 12,
                colour: Palette.Quiet);
        }
        var lying = 0;
        List<(double At, string Text, string Colour)> upright = [];
        foreach (var limit in _chart.Limits)
        {
            var colour = limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet;
            if (limit.IsVertical && _chart.Y.Scale == AxisScale.Categories) _sheet.Text(_frame.X.At(limit.Value) + 5,
                top + 15 + (16 * lying++), limit.Label, "start", 12, colour: colour);
            else if (limit.IsVertical) upright.Add((_frame.X.At(limit.Value), limit.Label, colour));
            else if (limit.OnRight) _sheet.Text(right - 4, _frame.Right!.At(limit.Value) - 4, limit.Label, "end", 12, colour: colour);
            else _sheet.Text(left + 4, _frame.Y.At(limit.Value) - 4, limit.Label, "start", 12, colour: colour);
        }
        upright.AddRange(_chart.Events.Select(e => (_frame.X.At(e.At), e.Label, Palette.Quiet)));
        var offsets = VerticalLabels.Offsets([.. upright.Select(u => (u.At, u.Text))], 16);
        for (var i = 0; i < upright.Count; i++) UprightLabel(upright[i].Text, upright[i].At, upright[i].Colour, offsets[i]);
        foreach (var callout in _chart.Callouts)
        {
            var (x, y) = (_frame.X.At(callout.X), _frame.Y.At(callout.Y));
            var lift = y - top < 34 ? -28 : 28;
            _sheet.Line(x, y, x + 30, y - lift, 1.2);
            _sheet.Circle(x, y, 3, 0, Palette.Ink);
            _sheet.Text(x + 33, y - lift + (lift > 0 ? -2 : 12), callout.Text, x > 0.7 * right ? "end" : "start", TextSize);
        }
    }

    private void UprightLabel(string text, double x, string colour, double offset) =>
        _sheet.Text(x - _frame.Box.Left < 18 ? x + 12 : x - 4, _frame.Box.Top + 6 + offset, text, "end", 12, upright: true, colour: colour);

    private void Legend(IReadOnlyList<int> slots)
    {
        if (!_chart.HasLegend) return;
        var (x, y) = (_frame.Box.Left + 4, _frame.Box.Top - 10);
        for (var i = 0; i < _chart.Marks.Count; i++)
        {
            var mark = _chart.Marks[i];
            if (mark.Name.Length == 0) continue;
            MarkPainter.Key(_sheet, mark, slots[i], x, y - 4);
            _sheet.Text(x + 32, y, mark.Name, "start", 12.5);
            x += 48 + (0.95 * SvgSheet.WidthOf(mark.Name, 12.5));
        }
    }

    // A path in space lies flat here: how far out against how high.
    private static EngineeringChart FromTheSide(EngineeringChart chart)
    {
        var path = chart.Marks.OfType<Path3D>().First();
        var distance = new Series("Distance over ground from the start", path.X.Unit,
            [.. path.X.Values.Zip(path.Y.Values, (x, y) => double.Hypot(x - path.X[0], y - path.Y[0]))]);
        return new EngineeringChart(chart.Title, Axis.For(distance), chart.Up!) { Marks = [new Curve(distance, path.Z) { Name = "" }],
            Remark = "seen from the side" };
    }
}
