using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Drawings;

/// <summary>A stock sheet with the pieces that are cut from it, to scale.</summary>
public static class CutPlanDrawing
{
    private const double Paper = 170, Left = 14, Top = 14;
    private const double NarrowPaper = 120, NarrowRoom = 92, NarrowLeft = 16, NarrowTop = 19;

    /// <summary>Draws the sheet.</summary>
    /// <param name="plan">The sheet and its pieces.</param>
    /// <exception cref="InvalidDesignException">The sheet or a piece has no size.</exception>
    public static Drawing Draw(CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        InvalidDesignException.ThrowIfAny($"Drawing '{plan.Title}'", plan.Validate());
        double length = plan.Length.Millimeters, width = plan.Width.Millimeters, scale = Math.Min(Paper / length, 130 / width);
        double X(UnitsNet.Length along) => Left + along.Millimeters * scale;
        double Y(UnitsNet.Length across) => Top + (width - across.Millimeters) * scale;
        var sheet = new SvgSheet();
        sheet.Text(4, 7, plan.Title, size: 4.6, bold: true);
        sheet.Open("sheet", ("length-mm", length), ("width-mm", width));
        sheet.Rectangle(Left, Top, length * scale, width * scale, Palette.Tint(Palette.Ink, 0.04), SvgSheet.Thick);
        sheet.Close();
        if (plan.Used is { } used) sheet.Line(X(used), Top, X(used), Top + width * scale, dash: SvgSheet.Hidden);
        var names = plan.Pieces.Select(p => p.Name).Distinct(StringComparer.Ordinal).ToList();
        foreach (var (name, corners) in plan.Pieces)
        {
            var place = names.IndexOf(name);
            sheet.Open("piece");
            sheet.Path(corners.Select(c => (X(c.Along), Y(c.Across))), closed: true, fill: Palette.Tint(Palette.At(place), 0.18));
            sheet.Text(corners.Average(c => X(c.Along)), corners.Average(c => Y(c.Across)) + 1, name, "middle", 2.8);
            sheet.Close();
        }

        var bottom = Top + width * scale;
        Dimension.Horizontal(sheet, Left, Left + length * scale, bottom + 7, bottom, bottom, $"{Mm(length)}");
        Dimension.Vertical(sheet, Left - 6, Top, bottom, Left, Left, Mm(width));
        Dimension.Head(sheet, Left + 26, bottom + 13, -1, 0);
        sheet.Line(Left, bottom + 13, Left + 24, bottom + 13);
        sheet.Text(Left + 28, bottom + 14, "along the sheet: the direction its plies are drawn for", size: 2.9, colour: Palette.Quiet);
        var note = string.Create(CultureInfo.InvariantCulture,
            $"Sheet {Mm(length)} × {Mm(width)} mm with "
            + $"{string.Join(", ", names.Select(n => $"{plan.Pieces.Count(p => p.Name == n)} × {n}"))}{(plan.Used is { } u ?
                $"; the rest beyond {Mm(u.Millimeters)} mm stays whole" : "")}.");
        sheet.Text(4, bottom + 20, note + " Lengths in mm, drawn to scale.", size: 2.9, colour: Palette.Quiet);
        return new Drawing(plan.Title, note, sheet.Finish(Math.Max(Left + length * scale + 6, 8 + SvgSheet.WidthOf(note, 2.9) + 70),
            bottom + 24, plan.Title, note))
        {
            Narrow = Narrow(plan, names, note),
        };
    }

    // On a phone the sheet stands on end, and a piece too small for its name has its colour alone; the list below has both.
    private static string Narrow(CutPlan plan, List<string> names, string note)
    {
        double length = plan.Length.Millimeters, width = plan.Width.Millimeters, scale = Math.Min(NarrowRoom / width, 190 / length);
        double X(UnitsNet.Length across) => NarrowLeft + across.Millimeters * scale;
        double Y(UnitsNet.Length along) => NarrowTop + along.Millimeters * scale;
        var (sheet, right, bottom) = (new SvgSheet(), NarrowLeft + width * scale, NarrowTop + length * scale);
        sheet.Text(4, 7, plan.Title, size: 4.6, bold: true);
        sheet.Rectangle(NarrowLeft, NarrowTop, right - NarrowLeft, bottom - NarrowTop, Palette.Tint(Palette.Ink, 0.04), SvgSheet.Thick);
        if (plan.Used is { } used) sheet.Line(NarrowLeft, Y(used), right, Y(used), dash: SvgSheet.Hidden);
        foreach (var (name, corners) in plan.Pieces)
        {
            sheet.Path(corners.Select(c => (X(c.Across), Y(c.Along))), closed: true, fill: Palette.Tint(Palette.At(names.IndexOf(name)),
                0.18));
            var (xs, ys) = (corners.Select(c => X(c.Across)).ToList(), corners.Select(c => Y(c.Along)).ToList());
            if (sheet.Wide(name) < 0.5 * (xs.Max() - xs.Min()) && 2 * sheet.Letters < ys.Max() - ys.Min())
                sheet.Text(xs.Average(), ys.Average() + 1, name, "middle");
        }

        Dimension.Horizontal(sheet, NarrowLeft, right, NarrowTop - 4, NarrowTop, NarrowTop, Mm(width));
        Dimension.Vertical(sheet, NarrowLeft - 6, NarrowTop, bottom, NarrowLeft, NarrowLeft, Mm(length));
        Dimension.Head(sheet, right + 5, NarrowTop + 26, 0, 1);
        sheet.Line(right + 5, NarrowTop, right + 5, NarrowTop + 24);
        var y = bottom + 7;
        foreach (var (name, place) in names.Select((n, i) => (n, i)))
        {
            sheet.Rectangle(4, y - 3, 5, 3.4, Palette.Tint(Palette.At(place), 0.18));
            sheet.Text(11, y, $"{name}: {plan.Pieces.Count(p => p.Name == name)}");
            y += 5;
        }
        y = sheet.Paragraph(4, y + 1, "Arrow: along the sheet, the direction its plies are drawn for." + (plan.Used is { } u
            ? $" The rest beyond {Mm(u.Millimeters)} mm stays whole." : "") + " Lengths in mm, drawn to scale.", NarrowPaper - 8,
            colour: Palette.Quiet);
        return sheet.Finish(NarrowPaper, y, plan.Title, note);
    }

    private static string Mm(double mm) => mm.ToString("0.#", CultureInfo.InvariantCulture);
}
