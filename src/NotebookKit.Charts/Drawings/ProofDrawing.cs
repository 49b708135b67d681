using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>How a proof with water is set up: vessel full of water under cover, pump and people at the stand-off behind their own cover,
/// nobody in line of a closure. A scheme, not to scale.</summary>
public static class ProofDrawing
{
    private const double Paper = 120, Ground = 70;

    /// <summary>Draws the set-up.</summary>
    /// <param name="proof">Proof pressure; above 0.</param>
    /// <param name="standOff">Distance of everybody from the vessel; above 0.</param>
    /// <param name="span">Largest distance between two supports; none where it isn't given.</param>
    /// <exception cref="InvalidDesignException">Pressure or distance isn't above zero.</exception>
    public static Drawing Draw(GaugePressure proof, Length standOff, Length? span = null)
    {
        List<Finding> findings = [];
        if (proof <= GaugePressure.Zero) findings.Add(Finding.Error($"Proof pressure is {proof}; it must be above 0 bar gauge."));
        if (standOff.Meters is not (> 0 and < double.PositiveInfinity)) findings.Add(Finding.Error($"Stand-off is {standOff.Show()}; it "
            + "must be above 0."));
        InvalidDesignException.ThrowIfAny("Drawing of a proof", findings);
        var sheet = new SvgSheet();
        var key = new NumberedKey();
        sheet.Title($"Proof with water at {proof}", Paper);
        KeepOut(sheet);
        Covers(sheet);
        Vessel(sheet);
        Pump(sheet);
        Point(42, 52, 42, 30, "people's cover", $"everybody behind it, at least {standOff.Show()} away, until the gauge reads zero");
        Point(21, 61, 21, 44, "hand pump, water only", "worked from behind cover");
        Point(34, 52, 32, 38, "gauge", $"reads to at least {proof * 1.3}");
        Point(50, 69, 52, 58, "vent valve", "worked from behind cover; open before anybody moves");
        Point(90, 51, 76, 34, "vessel, full of water", span is { } between
            ? $"supports at most {Digits.Round(between.Centimeters)} cm apart where it lies, free to grow"
            : "supported along its length where it lies, free to grow");
        Point(90, 36, 76, 24, "bleed, highest point", "shut when no bubble comes");
        Point(109, 52, 114, 44, "sandbags or a pit", "on all sides; nothing above but the sky");
        Dimension.Horizontal(sheet, 42, 90, 82, Ground + 2, Ground + 2, "");
        sheet.Text(66, 87, $"stand-off at least {standOff.Show()}", "middle", bold: true);
        var bottom = key.Write(sheet, 97, Paper);
        bottom = sheet.Paragraph(4, bottom + 2, "A scheme, not to scale. Bleed all air before pressure is raised; raise it in steps; "
            + "nobody leaves cover before the gauge reads zero.", Paper - 8, colour: Palette.Quiet);
        var description = $"Vessel full of water under cover at {proof}; pump, gauge and people at least {standOff.Show()} away, behind "
            + $"cover and out of line of both closures. {key.Words}.";
        return new Drawing("Proof with water", description, sheet.Finish(Paper, bottom, "Proof with water", description));

        void Point(double x, double y, double ballX, double ballY, string name, string what) => key.Point(sheet, x, y, ballX, ballY, name,
            what);
    }

    private static void KeepOut(SvgSheet sheet)
    {
        sheet.Open("keep-out");
        sheet.Path([(90, 36), (102, 13), (78, 13)], closed: true, SvgSheet.Thin, Palette.Danger, Palette.Tint(Palette.Danger, 0.12), "1 1");
        sheet.Path([(90, 64), (98, 78), (82, 78)], closed: true, SvgSheet.Thin, Palette.Danger, Palette.Tint(Palette.Danger, 0.12), "1 1");
        sheet.Text(74, 15.5, "nobody in line of a closure", "end", colour: Palette.Danger);
        sheet.Close();
    }

    private static void Covers(SvgSheet sheet)
    {
        sheet.Open("cover");
        foreach (var (x, top) in new[] { (39.0, 42.0), (68, 28), (106, 28) })
        {
            sheet.Rectangle(x, top, 6, Ground - top, Palette.Paper, SvgSheet.Thick);
            for (var y = top + 3; y < Ground; y += 3) sheet.Line(x, y + 1, x + 6, y - 2);
        }

        sheet.Line(4, Ground, 116, Ground, SvgSheet.Thick);
        sheet.Close();
    }

    private static void Vessel(SvgSheet sheet)
    {
        sheet.Open("vessel");
        sheet.Path([(84, 40), (96, 40), (96, 58), (93, 62), (87, 62), (84, 58)], closed: true, fill: Palette.Tint(Palette.Water, 0.22));
        for (var y = 43.0; y < 59; y += 2.2) sheet.Line(85.2, y, 95, y, SvgSheet.Thin, Palette.Water, "2.4 1.4");
        sheet.Rectangle(88, 36, 4, 4, Palette.Paper, SvgSheet.Thick);
        sheet.Rectangle(88.5, 62, 3, 3, Palette.Paper, SvgSheet.Thick);
        foreach (var (inner, outer) in new[] { (84.0, 80.0), (96, 100) })
        {
            sheet.Line(inner, 57, outer, 57, SvgSheet.Thick);
            sheet.Line(outer, 57, outer, Ground, SvgSheet.Thick);
        }

        sheet.Close();
    }

    private static void Pump(SvgSheet sheet)
    {
        sheet.Open("pump");
        // Only the hose goes to the vessel; pump, gauge and vent stand with the people, behind their cover.
        sheet.Path([(26, 65), (34, 65), (38, 69), (78, 69), (90, 68), (90, 65)], closed: false, width: SvgSheet.Thick);
        sheet.Rectangle(17, 60, 9, 10, Palette.Tint(Palette.Water, 0.22), SvgSheet.Thick);
        sheet.Line(21, 60, 14, 56, SvgSheet.Thick);
        sheet.Circle(34, 55, 4, SvgSheet.Thick, Palette.Paper);
        sheet.Line(34, 55, 36.4, 52.6, SvgSheet.Thick);
        sheet.Line(34, 59, 34, 65, SvgSheet.Thick);
        // A valve: two triangles tip to tip.
        sheet.Path([(46.5, 67), (46.5, 71), (50, 69), (53.5, 67), (53.5, 71), (50, 69)], closed: true, SvgSheet.Thin, fill: Palette.Paper);
        sheet.Circle(9, 54, 2.2, SvgSheet.Thick, Palette.Paper);
        sheet.Path([(9, 56.2), (9, 64), (6.5, Ground)], closed: false);
        sheet.Path([(9, 64), (11.5, Ground)], closed: false);
        sheet.Path([(9, 58.5), (14, 56)], closed: false);
        sheet.Close();
    }
}
