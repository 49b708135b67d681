using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Drawings;

/// <summary>The field seen from above, north up, to scale: border, pad with rail, range line, wind, stand-off, landings and the ellipse
/// that holds nine in ten.</summary>
public static class FieldMapDrawing
{
    private const double Paper = 120, Map = 104, Top = 14;
    private const int MostPoints = 600;

    /// <summary>Draws the map.</summary>
    /// <param name="map">What to draw.</param>
    /// <exception cref="InvalidDesignException">The map has no landings, or one isn't a number.</exception>
    public static Drawing Draw(FieldMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        InvalidDesignException.ThrowIfAny($"Drawing '{map.Title}'", map.Validate());
        var sheet = new SvgSheet();
        sheet.Title(map.Title, Paper);
        var all = map.Landings.Concat(map.Field).Append((0, 0))
            .Concat(map.SpectatorsM is { } s ? [(s, s), (-s, -s)] : Array.Empty<(double, double)>()).ToList();
        var (west, east, south, north) = (all.Min(p => p.Item1), all.Max(p => p.Item1), all.Min(p => p.Item2), all.Max(p => p.Item2));
        var scale = Map / (1.06 * Math.Max(Math.Max(east - west, north - south), 1));
        var (cx, cy) = (Paper / 2 - ((west + east) / 2 * scale), Top + (Map / 2) + ((south + north) / 2 * scale));
        (double, double) At((double East, double North) p) => (cx + (p.East * scale), cy - (p.North * scale));

        var lines = new List<(Action<double, double> Sign, string Text)>();
        sheet.Open("map", ("mm-per-m", scale));
        Field(sheet, map, At, lines);
        Circles(sheet, map, cx, cy, scale, lines);
        Landings(sheet, map, At, lines);
        RangeLine(sheet, map, At, lines);
        Pad(sheet, map, cx, cy, lines);
        sheet.Close();
        Compass(sheet, map, lines);
        var bottom = ScaleBar(sheet, scale, Top + Map + 6);
        foreach (var (sign, text) in lines)
        {
            sign(10, bottom - 1.1);
            bottom = sheet.Paragraph(18, bottom, text, Paper - 22) + 1.6;
        }

        var description = $"{map.Title}, north up. {string.Join(" ", lines.Select(l => l.Text + "."))}";
        return new Drawing(map.Title, description, sheet.Finish(Paper, bottom, map.Title, description));
    }

    private static void Field(SvgSheet sheet, FieldMap map, Func<(double, double), (double, double)> at,
        List<(Action<double, double>, string)> lines)
    {
        if (map.Field.Count < 3)
        {
            lines.Add(((_, _) => { }, "Field: not given"));
            return;
        }

        sheet.Path(map.Field.Select(at), closed: true, SvgSheet.Thick * 1.4, fill: Palette.Tint(Palette.Ink, 0.03));
        lines.Add(((x, y) => sheet.Line(x - 5, y, x + 4, y, SvgSheet.Thick * 1.4), $"Edge of the field: {map.FieldName}"));
    }

    private static void Circles(SvgSheet sheet, FieldMap map, double cx, double cy, double scale,
        List<(Action<double, double>, string)> lines)
    {
        foreach (var (radius, dash, who) in new[] { (map.CrewM, "2 1", "Crew, behind cover"), (map.SpectatorsM, "6 1.6", "Spectators") })
        {
            if (radius is not { } r)
            {
                lines.Add(((_, _) => { }, $"{who}: distance not shown"));
                continue;
            }

            sheet.Circle(cx, cy, r * scale, SvgSheet.Thick, colour: Palette.Danger, dash: dash);
            lines.Add(((x, y) => sheet.Line(x - 5, y, x + 4, y, SvgSheet.Thick, Palette.Danger, dash), $"{who}: {Digits.Round(r)} m and "
                + "more from the pad"));
        }
    }

    private static void Landings(SvgSheet sheet, FieldMap map, Func<(double, double), (double, double)> at,
        List<(Action<double, double>, string)> lines)
    {
        var every = (map.Landings.Count + MostPoints - 1) / MostPoints;
        foreach (var landing in map.Landings.Where((_, i) => i % every == 0))
        {
            var (x, y) = at(landing);
            sheet.Circle(x, y, 0.45, width: 0, fill: Palette.Data[0]);
        }

        var counted = map.Landings.Count.ToString(CultureInfo.InvariantCulture);
        lines.Add(((x, y) => sheet.Circle(x, y, 0.8, width: 0, fill: Palette.Data[0]), $"Landings: {counted} flights"
            + (every > 1 ? $", one in {every} drawn" : "") + (map.Remark.Length > 0 ? $"; {map.Remark}" : "")));
        if (map.Ellipse is not { } e) return;
        var (mx, my) = at((e.EastM, e.NorthM));
        var scale = Math.Abs(at((1, 0)).Item1 - at((0, 0)).Item1);
        var turn = (e.BearingDegrees - 90) * Math.PI / 180;
        sheet.Path(SvgSheet.Ellipse(mx, my, e.MajorM * scale, e.MinorM * scale, turn), closed: true, SvgSheet.Thick, Palette.Data[3]);
        lines.Add(((x, y) => sheet.Path(SvgSheet.Ellipse(x, y, 4, 1.8, 0), closed: true, SvgSheet.Thick, Palette.Data[3]),
            $"Nine in ten land within: {Digits.Round(e.MajorM)} m by {Digits.Round(e.MinorM)} m about a middle "
            + Place(e.EastM, e.NorthM)));
    }

    private static void RangeLine(SvgSheet sheet, FieldMap map, Func<(double, double), (double, double)> at,
        List<(Action<double, double>, string)> lines)
    {
        var (east, north) = (map.Landings.Average(l => l.EastM), map.Landings.Average(l => l.NorthM));
        var ((x1, y1), (x2, y2)) = (at((0, 0)), at((east, north)));
        sheet.Line(x1, y1, x2, y2, SvgSheet.Thin * 1.4, Palette.Ink, SvgSheet.CentreLine);
        lines.Add(((x, y) => sheet.Line(x - 5, y, x + 4, y, SvgSheet.Thin * 1.4, Palette.Ink, SvgSheet.CentreLine),
            $"Range line, pad to the mean landing: {Digits.Round(Math.Sqrt((east * east) + (north * north)))} m towards "
            + $"{Digits.Round(Bearing(east, north))}°"));
    }

    private static void Pad(SvgSheet sheet, FieldMap map, double cx, double cy, List<(Action<double, double>, string)> lines)
    {
        sheet.Rectangle(cx - 1.3, cy - 1.3, 2.6, 2.6, Palette.Ink);
        lines.Add(((x, y) => sheet.Rectangle(x - 1.3, y - 1.3, 2.6, 2.6, Palette.Ink), map.Rail is { } r
            ? $"Pad; the rail leans {Digits.Round(r.LeanDegrees)}° towards {Digits.Round(r.TowardsDegrees)}° (arrow)"
            : "Pad; the rail stands upright"));
        if (map.Rail is not { } rail) return;
        var (sin, cos) = Math.SinCos(rail.TowardsDegrees * Math.PI / 180);
        sheet.Line(cx, cy, cx + (9 * sin), cy - (9 * cos), SvgSheet.Thick);
        Dimension.Head(sheet, cx + (11 * sin), cy - (11 * cos), -sin, cos);
    }

    private static void Compass(SvgSheet sheet, FieldMap map, List<(Action<double, double>, string)> lines)
    {
        sheet.Line(Paper - 8, 22, Paper - 8, 14, SvgSheet.Thick);
        Dimension.Head(sheet, Paper - 8, 11.5, 0, 1);
        sheet.Text(Paper - 8, 26, "N", "middle", bold: true);
        if (map.Wind is not { } wind)
        {
            lines.Add(((_, _) => { }, "Wind: not given"));
            return;
        }

        var (sin, cos) = Math.SinCos(wind.FromDegrees * Math.PI / 180);
        Arrow(13, 19);
        lines.Add((Arrow, $"Wind at 10 m: {wind.Speed} from {Digits.Round(wind.FromDegrees)}°; the arrow flies with it"));

        void Arrow(double x, double y)
        {
            // From windward to leeward, feathered at its tail.
            var (tx, ty, hx, hy) = (x + (5 * sin), y - (5 * cos), x - (5 * sin), y + (5 * cos));
            sheet.Line(tx, ty, hx + (2 * sin), hy - (2 * cos), SvgSheet.Thick, Palette.Data[2]);
            Dimension.Head(sheet, hx, hy, sin, -cos);
            sheet.Line(tx, ty, tx + (1.6 * (sin + cos)), ty + (1.6 * (sin - cos)), SvgSheet.Thick, Palette.Data[2]);
            sheet.Line(tx, ty, tx + (1.6 * (sin - cos)), ty - (1.6 * (sin + cos)), SvgSheet.Thick, Palette.Data[2]);
        }
    }

    private static double ScaleBar(SvgSheet sheet, double scale, double y)
    {
        var lengths = new double[] { 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000 };
        var bar = lengths.LastOrDefault(l => l * scale <= 40, lengths[0]);
        sheet.Open("scale-bar", ("length-m", bar));
        sheet.Rectangle(6, y - 2, bar * scale / 2, 1.6, Palette.Ink);
        sheet.Rectangle(6 + (bar * scale / 2), y - 2, bar * scale / 2, 1.6, Palette.Paper);
        sheet.Text(6 + (bar * scale) + 2, y, $"{bar.ToString("0", CultureInfo.InvariantCulture)} m");
        sheet.Close();
        return y + 8;
    }

    private static string Place(double east, double north) =>
        $"{Digits.Round(Math.Abs(east))} m {(east < 0 ? "west" : "east")} and {Digits.Round(Math.Abs(north))} m "
        + $"{(north < 0 ? "south" : "north")} of the pad";

    private static double Bearing(double east, double north) => ((Math.Atan2(east, north) * 180 / Math.PI) + 360) % 360;
}
