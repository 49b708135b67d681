using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Drawings;

/// <summary>Our signs for the two centres.</summary>
internal static class Symbols
{
    /// <summary>A filled triangle below the axis, its tip on it, as a balance stands under a beam.</summary>
    public static void Gravity(SvgSheet sheet, double x, double axis) =>
        sheet.Path([(x, axis), (x + 1.9, axis + 3.8), (x - 1.9, axis + 3.8)], closed: true, width: SvgSheet.Thin, fill: Palette.Ink);

    /// <summary>An open diamond above the axis, its tip on it.</summary>
    public static void Pressure(SvgSheet sheet, double x, double axis) =>
        sheet.Path([(x, axis), (x + 1.8, axis - 2), (x, axis - 4), (x - 1.8, axis - 2)], closed: true, width: SvgSheet.Thick * 0.8,
            fill: Palette.Paper);
}
