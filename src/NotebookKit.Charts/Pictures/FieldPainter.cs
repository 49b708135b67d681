using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Pictures;

/// <summary>Draws a map as steps of colour with labelled level lines and its scale at the right.</summary>
internal static class FieldPainter
{
    private const int Steps = 12;

    public static void Paint(SvgSheet sheet, Field field, PlotFrame frame, double size)
    {
        var finite = field.Z.Values.Where(double.IsFinite).ToList();
        var (low, high) = (finite.Min(), finite.Max());
        for (var row = 0; row < field.Y.Count; row++)
        {
            var (top, bottom) = (frame.Y.At(Edge(field.Y.Values, row + 1)), frame.Y.At(Edge(field.Y.Values, row)));
            // Neighbours of one colour become one rectangle.
            for (var column = 0; column < field.X.Count;)
            {
                var step = Step(field.At(column, row), low, high);
                var end = column + 1;
                while (end < field.X.Count && Step(field.At(end, row), low, high) == step) end++;
                if (step >= 0)
                {
                    var (left, right) = (frame.X.At(Edge(field.X.Values, column)), frame.X.At(Edge(field.X.Values, end)));
                    sheet.Rectangle(left, top, right - left + 0.3, bottom - top + 0.3, Colour((step + 0.5) / Steps), 0);
                }
                column = end;
            }
        }
        foreach (var level in Levels(field, frame)) Level(sheet, field, level, frame, size);
        Scale(sheet, field, ScaleOf(field, frame), frame, size);
    }

    /// <summary>The values that have a level line.</summary>
    public static IReadOnlyList<double> Levels(Field field, PlotFrame frame) => ScaleOf(field, frame).Ticks(6);

    /// <summary>Room that the scale takes at the right [px].</summary>
    public static double RoomOf(Field field, double height, double size)
    {
        var ticks = new PlotScale(new Axis(field.Z.Name, field.Z.Unit), field.Z.Values, 0, 1, exact: true).Ticks(6);
        return 10 + 14 + 5 + ticks.Max(t => TextLines.Width(PlotScale.Label(t), size)) + 6
            + (1.25 * (size + 1) * TextLines.Break(field.ScaleTitle, height, size + 1).Count);
    }

    private static PlotScale ScaleOf(Field field, PlotFrame frame) => new(new Axis(field.Z.Name, field.Z.Unit), field.Z.Values,
        frame.Box.Bottom, frame.Box.Top, exact: true);

    /// <summary>Where the names of the level lines stand.</summary>
    public static IEnumerable<LabelBox> NamesOf(Field field, PlotFrame frame, double size) => Levels(field, frame)
        .SelectMany(level => Runs(field, level, frame).Select(run => run.Count > 8 ? NameAt(run[run.Count / 2], level, frame, size) : null))
        .OfType<LabelBox>();

    private static void Level(SvgSheet sheet, Field field, double level, PlotFrame frame, double size)
    {
        foreach (var run in Runs(field, level, frame))
        {
            if (run.Count > 1) sheet.Path(run, closed: false, width: 0.7, colour: Palette.Tint(Palette.Ink, 0.5));
            if (run.Count > 8 && NameAt(run[run.Count / 2], level, frame, size) is { } box)
                sheet.Text((box.Left + box.Right) / 2, box.Bottom - (0.3 * size), PlotScale.Label(level), "middle", size);
        }
    }

    private static IEnumerable<List<(double X, double Y)>> Runs(Field field, double level, PlotFrame frame)
    {
        var (x, y) = LevelLine.Of(field, level);
        return MarkPainter.Runs([.. x.Values], [.. y.Values]).Select(r => r.ConvertAll(p => (frame.X.At(p.X), frame.Y.At(p.Y))));
    }

    // A level's name interrupts its own line, as on every map, and stays inside the frame.
    private static LabelBox? NameAt((double X, double Y) at, double level, PlotFrame frame, double size)
    {
        var (w, h) = (TextLines.Width(PlotScale.Label(level), size), 1.2 * size);
        var box = new LabelBox(at.X - (w / 2), at.Y - (h / 2), at.X + (w / 2), at.Y + (h / 2));
        return box.Left >= frame.Box.Left && box.Right <= frame.Box.Right && box.Top >= frame.Box.Top && box.Bottom <= frame.Box.Bottom
            ? box : null;
    }

    // The scale stands outside the clipped area, so the clip is closed for it and opened again.
    private static void Scale(SvgSheet sheet, Field field, PlotScale scale, PlotFrame frame, double size)
    {
        var (left, top, right, bottom) = frame.Box;
        sheet.Close();
        var x = right + 10;
        for (var i = 0; i < Steps; i++)
        {
            var height = (bottom - top) / Steps;
            sheet.Rectangle(x, bottom - ((i + 1) * height), 14, height + 0.3, Colour((i + 0.5) / Steps), 0);
        }
        var ticks = scale.Ticks(6);
        foreach (var tick in ticks) sheet.Text(x + 19, scale.At(tick) + (0.35 * size), PlotScale.Label(tick), "start", size);
        x += 19 + ticks.Max(t => TextLines.Width(PlotScale.Label(t), size)) + 6 + size;
        foreach (var line in TextLines.Break(field.ScaleTitle, bottom - top, size + 1))
        {
            sheet.Text(x, (top + bottom) / 2, line, "middle", size + 1, upright: true);
            x += 1.25 * (size + 1);
        }
        sheet.Clip(left, top, right - left, bottom - top);
    }

    private static int Step(double value, double low, double high) =>
        double.IsFinite(value) ? high > low ? Math.Min(Steps - 1, (int)(Steps * (value - low) / (high - low))) : 0 : -1;

    // Edges lie half-way between values and end at the outermost ones.
    private static double Edge(IReadOnlyList<double> values, int index) =>
        index == 0 ? values[0] : index == values.Count ? values[^1] : (values[index - 1] + values[index]) / 2;

    private static string Colour(double share)
    {
        var at = share * (Palette.Map.Count - 1);
        var i = Math.Clamp((int)at, 0, Palette.Map.Count - 2);
        var (a, b) = (Convert.FromHexString(Palette.Map[i].AsSpan(1)), Convert.FromHexString(Palette.Map[i + 1].AsSpan(1)));
        return "#" + string.Concat(a.Zip(b, (p, q) => ((int)Math.Round(p + ((q - p) * (at - i)))).ToString("x2",
            System.Globalization.CultureInfo.InvariantCulture)));
    }
}
