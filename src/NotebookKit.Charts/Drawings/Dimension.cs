namespace NotebookKit.Charts.Drawings;

/// <summary>Dimension lines: thin, with narrow filled arrows, the number above the line; outside it where the space is too small.</summary>
internal static class Dimension
{
    private const double Arrow = 2.4;

    /// <summary>A horizontal dimension with its extension lines.</summary>
    /// <param name="sheet">Sheet to draw on.</param>
    /// <param name="x1">Left end [mm].</param>
    /// <param name="x2">Right end [mm].</param>
    /// <param name="y">Height of the dimension line [mm].</param>
    /// <param name="from1">Where the left extension line starts [mm].</param>
    /// <param name="from2">Where the right extension line starts [mm].</param>
    /// <param name="text">The number.</param>
    public static void Horizontal(SvgSheet sheet, double x1, double x2, double y, double from1, double from2, string text)
    {
        sheet.Open("dimension");
        Extension(sheet, x1, from1, y);
        Extension(sheet, x2, from2, y);
        if (x2 - x1 > 2.5 * Arrow)
        {
            sheet.Line(x1, y, x2, y);
            Head(sheet, x1, y, 1, 0);
            Head(sheet, x2, y, -1, 0);
        }
        else
        {
            sheet.Line(x1 - (2 * Arrow), y, x2 + (2 * Arrow), y);
            Head(sheet, x1, y, -1, 0);
            Head(sheet, x2, y, 1, 0);
        }
        var fits = sheet.Wide(text) < x2 - x1 - Arrow;
        sheet.Text(fits ? (x1 + x2) / 2 : x2 + (2 * Arrow) + 0.6, fits ? y - 0.8 : y + 1.1, text, fits ? "middle" : "start");
        sheet.Close();
    }

    /// <summary>An upright dimension with its extension lines.</summary>
    /// <param name="sheet">Sheet to draw on.</param>
    /// <param name="x">Place of the dimension line [mm].</param>
    /// <param name="y1">Upper end [mm].</param>
    /// <param name="y2">Lower end [mm].</param>
    /// <param name="from1">Where the upper extension line starts [mm].</param>
    /// <param name="from2">Where the lower extension line starts [mm].</param>
    /// <param name="text">The number.</param>
    public static void Vertical(SvgSheet sheet, double x, double y1, double y2, double from1, double from2, string text)
    {
        sheet.Open("dimension");
        sheet.Line(from1 + 0.8, y1, x + 1.2, y1);
        sheet.Line(from2 + 0.8, y2, x + 1.2, y2);
        var inside = y2 - y1 > 2.5 * Arrow;
        sheet.Line(x, inside ? y1 : y1 - (2 * Arrow), x, inside ? y2 : y2 + (2 * Arrow));
        Head(sheet, x, y1, 0, inside ? 1 : -1);
        Head(sheet, x, y2, 0, inside ? -1 : 1);
        var fits = sheet.Wide(text) < y2 - y1 - Arrow;
        if (fits) sheet.Text(x - 0.8, (y1 + y2) / 2, text, "middle", upright: true);
        else sheet.Text(x + 1, y1 - Arrow, text);
        sheet.Close();
    }

    /// <summary>A filled arrow head whose tip is at the place and whose body lies along the given direction.</summary>
    public static void Head(SvgSheet sheet, double x, double y, double dx, double dy)
    {
        const double half = 0.42;
        sheet.Path(
            [(x, y), (x + (Arrow * dx) - (half * dy), y + (Arrow * dy) + (half * dx)),
                (x + (Arrow * dx) + (half * dy), y + (Arrow * dy) - (half * dx))],
            closed: true, width: 0, fill: Theme.Palette.Ink);
    }

    private static void Extension(SvgSheet sheet, double x, double from, double to) =>
        sheet.Line(x, from + (Math.Sign(to - from) * 0.8), x, to + (Math.Sign(to - from) * 1.2));
}
