using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>How a proof with water is set up: vessel full of water under cover, pump and people at the stand-off, nobody in line of a
/// closure. A scheme, not to scale.</summary>
public static class ProofDrawing
{
    /// <summary>Draws the set-up.</summary>
    /// <param name="proof">Proof pressure; above 0.</param>
    /// <param name="standOff">Distance of everybody from the vessel; above 0.</param>
    /// <exception cref="InvalidDesignException">Pressure or distance isn't above zero.</exception>
    public static Drawing Draw(GaugePressure proof, Length standOff)
    {
        List<Finding> findings = [];
        if (proof <= GaugePressure.Zero) findings.Add(Finding.Error($"Proof pressure is {proof}; it must be above 0 bar gauge."));
        if (standOff.Meters is not (> 0 and < double.PositiveInfinity)) findings.Add(Finding.Error($"Stand-off is {standOff.Show()}; it "
            + "must be above 0."));
        InvalidDesignException.ThrowIfAny("Drawing of a proof", findings);
        var sheet = new SvgSheet();
        sheet.Text(4, 7, $"Proof with water at {proof}", size: 4.6, bold: true);
        KeepOut(sheet);
        Cover(sheet);
        Vessel(sheet);
        Pump(sheet);
        Dimension.Horizontal(sheet, 70, 150, 84, 75, 80, $"stand-off at least {standOff.Show()}");
        sheet.Text(4, 94, "A scheme, not to scale. Bleed all air before pressure is raised; raise it in steps; nobody leaves cover "
            + "before the gauge reads zero.", size: 2.9, colour: Palette.Quiet);
        var description = $"Vessel full of water under cover at {proof}, pump, gauge and people at least {standOff.Show()} away and out "
            + "of line of both closures, bleed at the highest point, vent line back to the pump.";
        return new Drawing("Proof with water", description, sheet.Finish(200, 98, "Proof with water", description));
    }

    private static void KeepOut(SvgSheet sheet)
    {
        sheet.Open("keep-out");
        sheet.Path([(150, 40), (162, 12), (138, 12)], closed: true, width: 0, fill: Palette.Tint(Palette.Danger, 0.16));
        sheet.Path([(150, 66), (162, 80), (138, 80)], closed: true, width: 0, fill: Palette.Tint(Palette.Danger, 0.16));
        sheet.Text(164, 17, "nobody in line", colour: Palette.Danger);
        sheet.Text(164, 21, "of a closure", colour: Palette.Danger);
        sheet.Close();
    }

    private static void Cover(SvgSheet sheet)
    {
        sheet.Open("cover");
        foreach (var x in new[] { 120.0, 172.0 })
        {
            sheet.Rectangle(x, 26, 6, 48, Palette.Paper, SvgSheet.Thick);
            for (var y = 28.0; y < 74; y += 3) sheet.Line(x, y + 2, x + 6, y - 1.5);
        }
        sheet.Line(112, 74, 190, 74, SvgSheet.Thick);
        sheet.Text(180, 46, "sandbags", size: 2.9);
        sheet.Text(180, 50, "or a pit", size: 2.9);
        sheet.Close();
    }

    private static void Vessel(SvgSheet sheet)
    {
        sheet.Open("vessel");
        sheet.Path([(144, 40), (156, 40), (156, 62), (153, 66), (147, 66), (144, 62)], closed: true,
            fill: Palette.Tint(Palette.Water, 0.22));
        for (var y = 43.0; y < 63; y += 2.2) sheet.Line(145.2, y, 155, y, SvgSheet.Thin, Palette.Water, "2.4 1.4");
        sheet.Rectangle(148, 36, 4, 4, Palette.Paper, SvgSheet.Thick);
        sheet.Rectangle(148.5, 66, 3, 3, Palette.Paper, SvgSheet.Thick);
        sheet.Line(140, 62, 144, 62, SvgSheet.Thick);
        sheet.Line(156, 62, 160, 62, SvgSheet.Thick);
        sheet.Line(140, 62, 140, 74, SvgSheet.Thick);
        sheet.Line(160, 62, 160, 74, SvgSheet.Thick);
        Leader(sheet, 150, 38, 116, 16, "bleed, highest point");
        Leader(sheet, 146, 52, 104, 24, "vessel, full of water");
        sheet.Close();
    }

    private static void Pump(SvgSheet sheet)
    {
        sheet.Open("pump");
        // Pump, gauge and vent stand with the people, behind their own cover; only the hose goes to the vessel.
        sheet.Path([(34, 68), (44, 68), (48, 73), (136, 73), (142, 73), (150, 71), (150, 69)], closed: false, width: SvgSheet.Thick);
        sheet.Rectangle(24, 64, 10, 10, Palette.Tint(Palette.Water, 0.22), SvgSheet.Thick);
        sheet.Line(28, 64, 21, 60, SvgSheet.Thick);
        sheet.Circle(42, 60, 4, SvgSheet.Thick, Palette.Paper);
        sheet.Line(42, 60, 44.4, 57.6, SvgSheet.Thick);
        sheet.Line(42, 64, 42, 68, SvgSheet.Thick);
        // A valve: two triangles tip to tip.
        sheet.Path([(52, 71), (52, 75), (56, 73), (60, 71), (60, 75), (56, 73)], closed: true, width: SvgSheet.Thin, fill: Palette.Paper);
        Leader(sheet, 30, 68, 24, 42, "hand pump, water only");
        Leader(sheet, 43, 57, 47, 48, "gauge");
        Leader(sheet, 56, 72, 62, 36, "vent valve, remote from the vessel");
        sheet.Rectangle(66, 46, 4, 28, Palette.Paper, SvgSheet.Thick);
        for (var y = 48.0; y < 73; y += 3) sheet.Line(66, y + 2, 70, y - 1);
        Leader(sheet, 68, 50, 84, 45, "people's cover");
        sheet.Circle(14, 58, 2.2, SvgSheet.Thick, Palette.Paper);
        sheet.Path([(14, 60.2), (14, 68), (11.5, 74)], closed: false);
        sheet.Path([(14, 68), (16.5, 74)], closed: false);
        sheet.Path([(14, 62.5), (21, 60)], closed: false);
        sheet.Line(6, 74, 112, 74, SvgSheet.Thick);
        sheet.Close();
    }

    private static void Leader(SvgSheet sheet, double x, double y, double textX, double textY, string text)
    {
        sheet.Line(x, y, textX, textY + 1);
        sheet.Circle(x, y, 0.5, width: 0, fill: Palette.Ink);
        sheet.Text(textX, textY, text, "middle");
    }
}
