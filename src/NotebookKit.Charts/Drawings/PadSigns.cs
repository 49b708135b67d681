using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Drawings;

/// <summary>Signs of the parts of a gas line.</summary>
/// <remarks>Source: after ISO 1219-1 and ISO 14617 (unverified).</remarks>
internal static class PadSigns
{
    /// <summary>One part, its middle at a place; broken where the part isn't given.</summary>
    public static void Draw(SvgSheet sheet, PadPart part, double x, double y)
    {
        var dash = part.IsGiven ? "" : SvgSheet.Hidden;
        switch (part.Kind)
        {
            case PadPartKind.Cylinder:
                sheet.Path([(x - 5, y + 16), (x - 5, y - 2), (x - 2, y - 6), (x + 2, y - 6), (x + 5, y - 2), (x + 5, y + 16)], closed: true,
                    fill: Palette.Paper, dash: dash);
                sheet.Path([(x - 1, y - 6), (x - 1, y - 9), (x + 1, y - 9), (x + 1, y - 6)], closed: true, fill: Palette.Paper, dash: dash);
                sheet.Line(x + 5, y, x + 10, y, SvgSheet.Thick);
                break;
            case PadPartKind.Regulator:
                Square(sheet, x, y, dash);
                sheet.Line(x - 4, y, x + 2, y);
                Dimension.Head(sheet, x + 4, y, -1, 0);
                // The adjustable spring above.
                sheet.Path([(x, y - 4.5), (x - 1.6, y - 5.4), (x + 1.6, y - 6.4), (x - 1.6, y - 7.4), (x + 1.6, y - 8.4), (x, y - 9.2)],
                    closed: false, width: SvgSheet.Thin, dash: dash);
                sheet.Line(x - 3.5, y - 5, x + 3.5, y - 9, dash: dash);
                break;
            case PadPartKind.FillValve:
                Valve(sheet, x, y, upright: false, dash);
                Handle(sheet, x, y, dash);
                break;
            case PadPartKind.DumpValve:
                Valve(sheet, x, y, upright: true, dash);
                sheet.Line(x, y, x + 6, y, SvgSheet.Thick, dash: dash);
                sheet.Rectangle(x + 6, y - 2.4, 4.8, 4.8, Palette.Paper, SvgSheet.Thick);
                sheet.Text(x + 8.4, y + 1.1, "M", "middle");
                break;
            case PadPartKind.Hose:
                sheet.Rectangle(x - 8, y - 2, 16, 4, Palette.Paper, 0);
                sheet.Path(Enumerable.Range(0, 33).Select(i => (x - 8 + (i * 0.5), y + (1.8 * Math.Sin(i * Math.PI / 8)))), closed: false,
                    width: SvgSheet.Thick, dash: dash);
                break;
            case PadPartKind.Restrictor:
                sheet.Rectangle(x - 4, y - 3, 8, 6, Palette.Paper, 0);
                sheet.Path([(x - 4, y - 3), (x - 2, y - 0.8), (x + 2, y - 0.8), (x + 4, y - 3)], closed: false, dash: dash);
                sheet.Path([(x - 4, y + 3), (x - 2, y + 0.8), (x + 2, y + 0.8), (x + 4, y + 3)], closed: false, dash: dash);
                break;
            case PadPartKind.CheckValve:
                sheet.Rectangle(x - 4, y - 4, 8, 8, Palette.Paper, 0);
                sheet.Path([(x - 1, y - 3.5), (x - 3.5, y), (x - 1, y + 3.5)], closed: false, dash: dash);
                sheet.Circle(x + 0.6, y, 2.3, fill: Palette.Paper, dash: dash);
                sheet.Line(x - 6, y, x - 3.5, y, SvgSheet.Thick);
                sheet.Line(x + 2.9, y, x + 6, y, SvgSheet.Thick);
                break;
            case PadPartKind.Gauge:
                sheet.Circle(x, y - 3, 4.2, fill: Palette.Paper, dash: dash);
                sheet.Line(x, y - 3, x + 2.4, y - 5.6, SvgSheet.Thick, dash: dash);
                break;
            case PadPartKind.ReliefValve:
                Square(sheet, x, y - 2, dash);
                sheet.Line(x, y + 2, x, y - 4, dash: dash);
                Dimension.Head(sheet, x, y - 6, 0, 1);
                sheet.Path([(x + 4, y - 2), (x + 4.8, y - 3.4), (x + 5.6, y - 0.6), (x + 6.4, y - 3.4), (x + 7.2, y - 2)], closed: false,
                    width: SvgSheet.Thin, dash: dash);
                break;
            default:
                sheet.Path([(x - 4, y + 16), (x - 4, y - 10), (x, y - 15), (x + 4, y - 10), (x + 4, y + 16)], closed: true,
                    fill: Palette.Paper);
                sheet.Rectangle(x - 3.6, y + 6, 7.2, 9.6, Palette.Tint(Palette.Water, 0.3), 0);
                for (var row = y + 8; row < y + 15; row += 2.2) sheet.Line(x - 3, row, x + 3, row, SvgSheet.Thin, Palette.Water, "2 1.2");
                break;
        }
    }

    private static void Square(SvgSheet sheet, double x, double y, string dash) =>
        sheet.Path([(x - 4, y - 4), (x + 4, y - 4), (x + 4, y + 4), (x - 4, y + 4)], closed: true, fill: Palette.Paper, dash: dash);

    // Two triangles, tip to tip.
    private static void Valve(SvgSheet sheet, double x, double y, bool upright, string dash)
    {
        (double, double) At(double along, double across) => upright ? (x + across, y + along) : (x + along, y + across);
        sheet.Path([At(-4, -3), At(-4, 3), At(4, -3), At(4, 3)], closed: true, fill: Palette.Paper, dash: dash);
    }

    private static void Handle(SvgSheet sheet, double x, double y, string dash)
    {
        sheet.Line(x, y, x, y - 6, SvgSheet.Thick, dash: dash);
        sheet.Line(x - 3, y - 6, x + 3, y - 6, SvgSheet.Thick, dash: dash);
    }
}
