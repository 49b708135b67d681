using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Charts.Theme;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Pictures;

/// <summary>A chart as a still picture in SVG, for pages and front-ends that run no script.</summary>
internal sealed class ChartPicture
{
    private const int MostPoints = 1_500;

    private readonly EngineeringChart _chart;
    private readonly PictureForm _form;
    private readonly SvgSheet _sheet = new();
    private readonly PlotFrame _frame;
    private readonly IReadOnlyList<string> _title, _remark;

    private ChartPicture(EngineeringChart chart, PictureForm form)
    {
        (_chart, _form) = (chart, form);
        _title = TextLines.Break(chart.Title, form.Width - 8, form.TitleText, bold: true);
        _remark = TextLines.Break(chart.Remark, form.Width - 8, form.Text);
        _frame = PlotFrame.For(chart, form, 8 + (1.25 * form.TitleText * _title.Count) + (form.Step * _remark.Count) + 8);
    }

    public static string Draw(EngineeringChart chart, PictureForm form)
    {
        if (chart.Up is not null) return Draw(FromTheSide(chart), form);
        chart = chart with { Marks = [.. chart.Marks.Select(m => m is Points points ? points.AtMost(MostPoints) : m)] };
        var picture = new ChartPicture(chart, form);
        var height = picture.Paint();
        return picture._sheet.Finish(form.Width, height, chart.Title, chart.ToString(), unit: "");
    }

    private double Paint()
    {
        var (left, top, right, bottom) = _frame.Box;
        var y = 8.0;
        foreach (var line in _title) _sheet.Text(4, (y += 1.25 * _form.TitleText) - 4, line, size: _form.TitleText, bold: true);
        foreach (var line in _remark) _sheet.Text(4, (y += _form.Step) - 4, line, size: _form.Text, colour: Palette.Quiet);
        var below = Grid();
        _sheet.Clip(left, top, right - left, bottom - top);
        foreach (var span in _chart.Spans) Span(span);
        var slots = MarkPainter.Slots(_chart);
        for (var i = 0; i < _chart.Marks.Count; i++) MarkPainter.Paint(_sheet, _chart, _chart.Marks[i], slots[i], _frame, _form.Text);
        foreach (var limit in _chart.Limits)
            Rule(limit.IsVertical, limit.Value, limit.OnRight, limit.Slot is { } slot ? Palette.At(slot) : Palette.Quiet, "7 4", 1.6);
        foreach (var moment in _chart.Events) Rule(true, moment.At, false, Palette.Frame, "2 3", 1.2);
        _sheet.Close();
        _sheet.Rectangle(left, top, right - left, bottom - top, "none", 1, Palette.Frame);
        var (words, key) = PictureLabels.Place(_chart, _frame, _form.Text);
        foreach (var word in words) word.Paint(_sheet, _form.Text);
        return Key(key, Legend(slots, below)) + 6;
    }

    // Grid, numbers and titles of the axes; gives where the words below the drawing area end.
    private double Grid()
    {
        var (left, top, right, bottom) = _frame.Box;
        var below = bottom + 5 + Across(left, top, right, bottom);
        foreach (var line in TextLines.Break(_chart.X.Title, right - left + 20, _form.Text + 1))
            _sheet.Text((left + right) / 2, below += 1.3 * (_form.Text + 1), line, "middle", _form.Text + 1);
        foreach (var (at, text) in _frame.TicksY())
        {
            _sheet.Line(left, at, right, at, 1, Palette.Grid);
            _sheet.Line(left - 5, at, left, at, 1, Palette.Frame);
            _sheet.Text(left - 8, at + (0.35 * _form.Text), text, "end", _form.Text);
        }
        for (var i = 0; i < _frame.NamesY.Count; i++)
        {
            var lines = PlotFrame.NameLines(_frame.NamesY[i], _form);
            var y = _frame.Y.At(i) - (_form.Step * lines.Count / 2) + (0.78 * _form.Step);
            foreach (var line in lines) { _sheet.Text(left - 6, y, line, "end", _form.Text); y += _form.Step; }
        }
        if (_frame.NamesY.Count == 0) Beside(_chart.Y, 4 + _form.Text);
        else _sheet.Text(left - 12, bottom + 5 + (0.85 * _form.Step), _chart.Y.Title, "end", _form.Text + 1);
        if (_chart.Right is not { } axis || _frame.Right is not { } scale) return below;
        foreach (var tick in scale.Ticks())
        {
            _sheet.Line(right, scale.At(tick), right + 5, scale.At(tick), 1, Palette.Frame);
            _sheet.Text(right + 8, scale.At(tick) + (0.35 * _form.Text), PlotScale.Label(tick), "start", _form.Text);
        }
        Beside(axis, _form.Width - 5 - (1.25 * (_form.Text + 1) * (PlotFrame.TitleBeside(axis, _form, bottom - top).Count - 1)));
        return below;
    }

    private void Beside(Axis axis, double x)
    {
        foreach (var line in PlotFrame.TitleBeside(axis, _form, _frame.Box.Bottom - _frame.Box.Top))
        {
            _sheet.Text(x, (_frame.Box.Top + _frame.Box.Bottom) / 2, line, "middle", _form.Text + 1, upright: true);
            x += 1.25 * (_form.Text + 1);
        }
    }

    // Numbers or names below the drawing area; gives their height. Names that are wider than their place stand upright.
    private double Across(double left, double top, double right, double bottom)
    {
        var ticks = _frame.TicksX(_form.Text);
        var names = _frame.NamesX.Count > 0;
        var room = names ? Math.Abs(_frame.X.At(1) - _frame.X.At(0)) - 6 : right - left;
        var lines = ticks.Select(t => TextLines.Break(t.Text, room, _form.Text)).ToList();
        var upright = names && lines.SelectMany(l => l).Any(l => TextLines.Width(l, _form.Text) > room);
        for (var i = 0; i < ticks.Count; i++)
        {
            var at = ticks[i].At;
            if (!names) _sheet.Line(at, top, at, bottom, 1, Palette.Grid);
            _sheet.Line(at, bottom, at, bottom + 5, 1, Palette.Frame);
            if (upright) _sheet.Text(at + (0.35 * _form.Text), bottom + 8, ticks[i].Text, "end", _form.Text, upright: true);
            else for (var k = 0; k < lines[i].Count; k++)
                _sheet.Text(at, bottom + 5 + (_form.Step * (k + 0.85)), lines[i][k], "middle", _form.Text);
        }
        return upright ? ticks.Max(t => TextLines.Width(t.Text, _form.Text)) + 3 : _form.Step * lines.Max(l => l.Count);
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

    // The legend stands below the axis, row by row; gives where it ends.
    private double Legend(IReadOnlyList<int> slots, double y)
    {
        if (!_chart.HasLegend) return y;
        const double sample = 34, gap = 16;
        var (x, step) = (4.0, _form.Step + 3);
        y += step + 4;
        for (var i = 0; i < _chart.Marks.Count; i++)
        {
            var mark = _chart.Marks[i];
            if (mark.Name.Length == 0) continue;
            var lines = TextLines.Break(mark.Name, _form.Width - sample - 12, _form.Text);
            var width = sample + lines.Max(l => TextLines.Width(l, _form.Text)) + gap;
            if (x > 4 && x + width - gap > _form.Width) (x, y) = (4, y + step);
            MarkPainter.Key(_sheet, mark, slots[i], x, y - 4);
            for (var k = 0; k < lines.Count; k++)
                _sheet.Text(x + sample, y + (_form.Step * k), lines[k], "start", _form.Text);
            x += width;
            if (lines.Count > 1) (x, y) = (4, y + (_form.Step * (lines.Count - 1)) + step);
        }
        return x > 4 ? y + 4 : y + 4 - step;
    }

    // What found no place in the drawing area.
    private double Key(IReadOnlyList<(string Sign, string Text)> key, double y)
    {
        if (key.Count > 0) y += 4;
        foreach (var (sign, text) in key)
        {
            _sheet.Text(8, y + _form.Step, sign, size: _form.Text, bold: true);
            foreach (var line in TextLines.Break(text, _form.Width - 36, _form.Text))
                _sheet.Text(30, y += _form.Step, line, size: _form.Text, colour: Palette.Quiet);
        }
        return y;
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
