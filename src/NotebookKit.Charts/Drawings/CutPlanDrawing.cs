using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Drawings;

/// <summary>A stock sheet with the pieces that are cut from it, to scale.</summary>
public static class CutPlanDrawing
{
    private const double Paper = 170, Left = 14, Top = 14;

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
            bottom + 24, plan.Title, note));
    }

    private static string Mm(double mm) => mm.ToString("0.#", CultureInfo.InvariantCulture);
}
