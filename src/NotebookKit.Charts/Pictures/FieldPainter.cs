using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Pictures;

/// <summary>Draws a map as steps of colour with labelled level lines and its scale at the right.</summary>
internal static class FieldPainter
{
    private const int Steps = 12;

    public static void Paint(SvgSheet sheet, Field field, PlotFrame frame)
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
        var scale = new PlotScale(new Axis(field.Z.Name, field.Z.Unit), [low, high], frame.Box.Bottom, frame.Box.Top, exact: true);
        foreach (var level in scale.Ticks(6)) Level(sheet, field, level, frame);
        Scale(sheet, field, scale, frame);
    }

    private static void Level(SvgSheet sheet, Field field, double level, PlotFrame frame)
    {
        var (x, y) = LevelLine.Of(field, level);
        List<(double X, double Y)> run = [];
        for (var i = 0; i <= x.Count; i++)
        {
            if (i < x.Count && double.IsFinite(x[i]))
            {
                run.Add((frame.X.At(x[i]), frame.Y.At(y[i])));
                continue;
            }
            if (run.Count > 1) sheet.Path(run, closed: false, width: 0.7, colour: Palette.Tint(Palette.Ink, 0.5));
            if (run.Count > 8) sheet.Text(run[run.Count / 2].X, run[run.Count / 2].Y + 4, PlotScale.Label(level), "middle", 11);
            run = [];
        }
    }

    // The scale stands outside the clipped area, so the clip is closed for it and opened again.
    private static void Scale(SvgSheet sheet, Field field, PlotScale scale, PlotFrame frame)
    {
        var (left, top, right, bottom) = frame.Box;
        sheet.Close();
        var x = right + 16;
        for (var i = 0; i < Steps; i++)
        {
            var height = (bottom - top) / Steps;
            sheet.Rectangle(x, bottom - ((i + 1) * height), 16, height + 0.3, Colour((i + 0.5) / Steps), 0);
        }
        foreach (var tick in scale.Ticks(6)) sheet.Text(x + 21, scale.At(tick) + 4.5, PlotScale.Label(tick), "start", 12);
        sheet.Text(x + 96, (top + bottom) / 2, field.ScaleTitle, "middle", 14, upright: true);
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
