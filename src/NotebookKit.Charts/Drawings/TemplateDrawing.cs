using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Sheets;

namespace NotebookKit.Charts.Drawings;

/// <summary>Patterns at full size on pages for A4 and letter: rulers to check the printer, pieces with overlaps, page numbers.</summary>
public static class TemplateDrawing
{
    /// <summary>Draws the pages.</summary>
    /// <param name="sheet">The patterns.</param>
    public static IReadOnlyList<TemplatePage> Pages(TemplateSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var pages = TemplateTiling.Lay(sheet.Templates);
        return [.. pages.Select((tiles, i) => Page(sheet, tiles, i + 1, pages.Count))];
    }

    private static TemplatePage Page(TemplateSheet set, IReadOnlyList<TemplateTile> tiles, int number, int count)
    {
        var paper = new SvgSheet();
        var title = string.Create(CultureInfo.InvariantCulture, $"{set.Title}, page {number} of {count}");
        paper.Text(0, 5, title, size: 4, bold: true);
        paper.Text(0, 10, "Print at 100 %, \"fit to page\" off. Measure the ruler before the first cut.", size: 3.4);
        Ruler(paper, "ruler-mm", 0, 19, 100, 10, "100 mm");
        if (number == 1) Ruler(paper, "ruler-in", 0, 31, 101.6, 25.4, "4 in");
        foreach (var tile in tiles) Tile(paper, set.Templates.First(t => t.Name == tile.Template), tile);
        var description = $"{title}: {string.Join("; ", tiles.Select(Name))}.";
        return new(number, count, paper.Finish(TemplateTiling.PageWidth, TemplateTiling.PageHeight, title, description), tiles);

        string Name(TemplateTile t) => string.Create(CultureInfo.InvariantCulture, $"{t.Template}, row {t.Row}, column {t.Column}");
    }

    private static void Ruler(SvgSheet paper, string name, double x, double y, double lengthMm, double step, string text)
    {
        paper.Open(name, ("length-mm", lengthMm));
        paper.Line(x, y, x + lengthMm, y, SvgSheet.Thin);
        for (var at = 0.0; at < lengthMm + 0.01; at += step)
        {
            var end = at < 0.01 || at > lengthMm - 0.01;
            paper.Line(x + at, y - (end ? 5 : 2.5), x + at, y, SvgSheet.Thin);
        }

        paper.Text(x + lengthMm + 2, y, text, size: 3.4, bold: true);
        paper.Close();
    }

    private static void Tile(SvgSheet paper, Template template, TemplateTile tile)
    {
        var (dx, dy) = (tile.AtMm.X - tile.FromMm.Along, tile.AtMm.Y - tile.FromMm.Across);
        var (x, y, w, h) = (tile.AtMm.X, tile.AtMm.Y, tile.SizeMm.Along, tile.SizeMm.Across);
        var columns = Count(template.Length.Millimeters, tile.SizeMm.Along, tile.FromMm.Along);
        var split = tile.FromMm != (0, 0) || columns;
        var name = template.Name + (split || h < template.Width.Millimeters - 0.01
            ? string.Create(CultureInfo.InvariantCulture, $", piece {tile.Row}.{tile.Column}") : "");
        paper.Open("template", ("from-mm", tile.FromMm.Along), ("across-mm", tile.FromMm.Across), ("length-mm", w), ("width-mm", h),
            ("whole-length-mm", template.Length.Millimeters), ("whole-width-mm", template.Width.Millimeters));
        paper.Text(x, y - 6.5, name, size: 3.6, bold: true);
        if (tile.FromMm == (0, 0)) paper.Text(x, y - 2.2, Short(template.Note), size: 2.7, colour: Palette.Quiet);
        // A hair beyond the piece, so that a line on its edge is whole.
        paper.Clip(x - 0.4, y - 0.4, w + 0.8, h + 0.8);
        foreach (var line in template.Lines)
        {
            List<(double X, double Y)> points = [.. line.Points.Select(p => (p.Along.Millimeters + dx, p.Across.Millimeters + dy))];
            paper.Path(points, line.IsClosed, Width(line.Kind), dash: Dash(line.Kind));
            if (line.Kind == TemplateLineKind.Grain) Arrow(paper, points[^2], points[^1]);
        }

        foreach (var circle in template.Circles) paper.Circle(circle.Centre.Along.Millimeters + dx, circle.Centre.Across.Millimeters + dy,
            circle.Diameter.Millimeters / 2, Width(circle.Kind), dash: Dash(circle.Kind));
        foreach (var word in template.Words) paper.Text(word.At.Along.Millimeters + dx, word.At.Across.Millimeters + dy + 1, word.Text,
            "middle", 2.8);
        paper.Close();
        Marks(paper, tile, template, x, y, w, h);
        paper.Close();
    }

    // Where the next piece is laid on: its edge comes to this line.
    private static void Marks(SvgSheet paper, TemplateTile tile, Template template, double x, double y, double w, double h)
    {
        const double overlap = TemplateTiling.Overlap;
        if (Count(template.Length.Millimeters, w, tile.FromMm.Along))
        {
            Cross(x + w - overlap, true, string.Create(CultureInfo.InvariantCulture, $"lay piece {tile.Row}.{tile.Column + 1} to here"));
        }

        if (tile.FromMm.Along > 0) Cross(x, true, "");
        if (Count(template.Width.Millimeters, h, tile.FromMm.Across)) Cross(y + h - overlap, false, string.Create(
            CultureInfo.InvariantCulture, $"lay piece {tile.Row + 1}.{tile.Column} to here"));
        if (tile.FromMm.Across > 0) Cross(y, false, "");

        void Cross(double at, bool upright, string text)
        {
            paper.Open("overlap");
            if (upright)
            {
                paper.Line(at, y - 2, at, y + h + 2, SvgSheet.Thin, dash: "1 1");
                if (text.Length > 0) paper.Text(at - 1, y + h + 4.4, text, "end", 2.7);
            }
            else
            {
                paper.Line(x - 2, at, x + w + 2, at, SvgSheet.Thin, dash: "1 1");
                if (text.Length > 0) paper.Text(x + w, at - 1, text, "end", 2.7);
            }

            paper.Close();
        }
    }

    private static bool Count(double whole, double size, double from) => from + size < whole - 0.01;

    private static void Arrow(SvgSheet paper, (double X, double Y) from, (double X, double Y) to)
    {
        var length = Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2));
        Dimension.Head(paper, to.X, to.Y, (from.X - to.X) / length, (from.Y - to.Y) / length);
    }

    private static double Width(TemplateLineKind kind) => kind == TemplateLineKind.Cut ? SvgSheet.Thick * 0.6 : SvgSheet.Thin;

    private static string Dash(TemplateLineKind kind) => kind switch
    {
        TemplateLineKind.Centre => SvgSheet.CentreLine,
        TemplateLineKind.Mark => "4 1",
        _ => "",
    };

    // What one line of the page holds; the whole note stands in the list of the sheet.
    private static string Short(string note)
    {
        var end = note.IndexOf(". ", StringComparison.Ordinal);
        var first = end > 0 && SvgSheet.WidthOf(note, 2.7) > TemplateTiling.PageWidth - 10 ? note[..(end + 1)] : note;
        return first;
    }
}
