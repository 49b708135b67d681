using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Drawings;

/// <summary>The line from cylinder to vessel with its valves and ratings. A part that isn't given is drawn broken and called so.</summary>
/// <remarks>Source: signs of valves, gauge and regulator after ISO 1219-1 and ISO 14617 (unverified).</remarks>
public static class PadDrawing
{
    private const double Paper = 120, Upper = 34, Lower = 74;

    /// <summary>Draws the line.</summary>
    /// <param name="plumbing">Its parts.</param>
    public static Drawing Draw(PadPlumbing plumbing)
    {
        ArgumentNullException.ThrowIfNull(plumbing);
        var sheet = new SvgSheet();
        sheet.Title(plumbing.Title, Paper);
        Pipes(sheet);
        var key = new NumberedKey();
        foreach (var part in plumbing.Parts)
        {
            var (x, y, ballX, ballY) = Place(part.Kind);
            sheet.Open("part");
            PadSigns.Draw(sheet, part, x, y);
            sheet.Close();
            key.Point(sheet, ballX, ballY, ballX, ballY, part.Name, string.Join("; ",
                new[] { part.RatingText, part.Note }.Where(t => t.Length > 0)));
        }

        sheet.Text(Paper - 4, Upper - 17, "gas", "end", colour: Palette.Quiet);
        Dimension.Head(sheet, Paper - 4, Upper - 14.5, -1, 0);
        sheet.Line(Paper - 16, Upper - 14.5, Paper - 6, Upper - 14.5);
        var bottom = key.Write(sheet, 104, Paper);
        var note = "A scheme, not to scale. Valves are worked and the gauge is read from behind cover. A broken sign: not given. A part "
            + "without a rating is not shown to be strong enough.";
        bottom = sheet.Paragraph(4, bottom + 2, note, Paper - 8, colour: Palette.Quiet);
        var description = $"{plumbing.Title}, in the order in which the gas meets its parts: {key.Words}.";
        return new Drawing(plumbing.Title, description, sheet.Finish(Paper, bottom, plumbing.Title, description));
    }

    private static (double X, double Y, double BallX, double BallY) Place(PadPartKind kind) => kind switch
    {
        PadPartKind.Cylinder => (14, Upper, 14, Upper - 14),
        PadPartKind.Regulator => (40, Upper, 40, Upper - 14),
        PadPartKind.FillValve => (66, Upper, 66, Upper - 14),
        PadPartKind.Hose => (94, Upper, 94, Upper - 8),
        PadPartKind.Restrictor => (12, Lower, 12, Lower - 9),
        PadPartKind.CheckValve => (34, Lower, 34, Lower - 9),
        PadPartKind.Gauge => (54, Lower - 10, 46, Lower - 16),
        PadPartKind.DumpValve => (54, Lower + 12, 46, Lower + 12),
        PadPartKind.ReliefValve => (78, Lower - 10, 92, Lower - 14),
        _ => (106, Lower, 115, Lower - 8),
    };

    private static void Pipes(SvgSheet sheet)
    {
        sheet.Open("pipes");
        // Down on the right and back to the left: the hose on its way to the pad.
        sheet.Path([(14, Upper), (112, Upper), (112, 51), (4, 51), (4, Lower), (106, Lower)], closed: false, width: SvgSheet.Thick);
        sheet.Line(54, Lower - 10, 54, Lower + 20, SvgSheet.Thick);
        sheet.Line(78, Lower - 10, 78, Lower, SvgSheet.Thick);
        foreach (var x in new[] { 54.0, 78 }) sheet.Circle(x, Lower, 0.9, width: 0, fill: Palette.Ink);
        Dimension.Head(sheet, 54, Lower + 22, 0, -1);
        sheet.Text(57, Lower + 22, "to open air, away from people", size: SvgSheet.TextSize);
        sheet.Close();
    }
}
