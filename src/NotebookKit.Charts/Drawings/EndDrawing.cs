using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>One end of a vessel in section, as assembled: wall, closure, opening, fitting with thread and seal, sleeve carried over to its
/// neck, bond, cap discs. Liner and plies are drawn thicker than they are; everything else is to one scale.</summary>
/// <remarks>Source: sections and hatching after ISO 128-3 (unverified).</remarks>
public static class EndDrawing
{
    internal const double Paper = 120;
    internal const double Thicker = 2.5;

    /// <summary>Draws an end, its outside to the right.</summary>
    /// <param name="title">What it shows: "Nozzle end, Curlew".</param>
    /// <param name="end">The end.</param>
    /// <param name="layup">The vessel's layup.</param>
    /// <param name="passage">Narrowest bore of the fitting; none where it isn't given, and none is drawn.</param>
    public static Drawing Draw(string title, VesselEnd end, Layup layup, Length? passage = null)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(end);
        ArgumentNullException.ThrowIfNull(layup);
        var shape = new EndSection(end, layup);
        var room = Paper - 12;
        var most = Math.Min(room / (shape.LastMm - shape.FirstMm), 84 / (2 * shape.OutsideMm));
        var scale = Scales.FirstOrDefault(s => s <= most, most);
        var sheet = new SvgSheet();
        sheet.Title(title, Paper);
        var (left, top) = (6 - (shape.FirstMm * scale), 21 + (shape.OutsideMm * scale));
        var place = new EndPlace(left, top, scale);
        EndPainter.Paint(sheet, end, shape, place, passage);
        sheet.Line(place.X(shape.FirstMm) - 2, top, place.X(shape.LastMm) + 4, top, SvgSheet.Thin, Palette.Ink, SvgSheet.CentreLine);
        var key = new NumberedKey();
        Pointers(sheet, key, end, shape, place, layup, passage);
        var bottom = key.Write(sheet, top + (shape.OutsideMm * scale) + 9, Paper);
        var note = $"Scale {Scale(scale)} where the drawing is 120 mm wide; liner and plies are drawn "
            + $"{Thicker.ToString(CultureInfo.InvariantCulture)} times as thick as they are. How the closure's rim meets "
            + "the liner, and the neck's own wall, aren't in the design and are drawn plain.";
        bottom = sheet.Paragraph(4, bottom + 2, note, Paper - 8, SvgSheet.TextSize, Palette.Quiet);
        var description = $"{title}, in section: {key.Words}.";
        return new Drawing(title, description, sheet.Finish(Paper, bottom, title, description));
    }

    private static readonly double[] Scales = [2, 1.5, 1, 0.75, 0.5, 0.4, 0.3, 0.25, 0.2, 0.15, 0.1];

    private static string Scale(double scale) => scale >= 1 ? $"{Digits.Round(scale, 2)}:1" : $"1:{Digits.Round(1 / scale, 2)}";

    // The figures stand in a row above, in the order of their places, so that no two lines cross.
    private static void Pointers(SvgSheet sheet, NumberedKey key, VesselEnd end, EndSection s, EndPlace at, Layup layup, Length? passage)
    {
        var sleeves = layup.Plies.Where(p => p.Ply is BraidedSleeve).ToList();
        var all = layup.Plies.Count;
        List<(double X, double R, string Name, string What)> marks =
        [
            (s.FirstMm + 6, s.LinerMm, "liner", layup.Vessel.Liner.Material is { } tube ? $"{tube.Name}, {layup.Vessel.Liner.Wall.Show()}"
                : "removed after curing"),
            (s.FirstMm + 16, s.WallMm, "wall", $"{all} {(all == 1 ? "ply" : "plies")}, {Mm(layup.Thickness)} in all"),
            (s.CrownMm * 0.25, s.OuterAt(s.CrownMm * 0.25), end.Closure.Shape, $"{end.Closure.Material.Name}, "
                + $"{Mm(end.Closure.Wall)} thick{(s.DepthMm > 0.1 ? $", {Digits.Round(s.DepthMm)} mm deep inside" : "")}"),
        ];
        if (end.Seal is { } seal) marks.Add((-4, s.BoreMm, $"{seal.Name} of the closure", Holds(seal)));
        if (end.Joints.OfType<CarriedSleeve>().FirstOrDefault() is { } sleeve)
        {
            marks.Add((s.NeckFromMm * 0.7, s.SleeveAt(s.NeckFromMm * 0.7), "sleeves carried over", $"{sleeves.Count} "
                + $"{(sleeves.Count == 1 ? "ply" : "plies")}, to a neck of {(sleeve.Neck is { } n ? Mm(n) : "a size that isn't given")}"));
            if (s.TailMm > 0) marks.Add((s.NeckFromMm + (s.TailMm * 0.45), s.NeckMm + s.SleeveMm, "tail",
                $"{Digits.Round(s.TailMm)} mm bonded along the neck{(sleeve.IsTiedOff ? ", tied off" : ", not tied off")}"));
            else marks.Add((s.NeckFromMm, s.NeckMm, "tail", "length not given"));
            if (sleeve.IsTiedOff && s.TailMm > 0) marks.Add((s.NeckFromMm + (s.TailMm * 0.8), s.NeckMm + s.SleeveMm + 2, "tie",
                "turns of yarn"));
        }

        foreach (var plug in end.Joints.OfType<BondedPlug>()) marks.Add((-s.OverlapMm * 0.6, s.BoreMm, "bond",
            $"{plug.Adhesive.Name}, {Mm(plug.Overlap)} long, line {Mm(plug.BondLine)}"));
        foreach (var boss in end.Joints.OfType<ThreadedBoss>()) marks.Add((-s.OverlapMm * 0.4, boss.PitchDiameter.Millimeters / 2,
            "thread of the closure", $"⌀ {Mm(boss.PitchDiameter)}, {Mm(boss.Engagement)} engaged"));
        if (end.Discs is { } discs) marks.Add((s.CrownMm * 0.6, s.SleeveAt(s.CrownMm * 0.6), "cap discs", $"{discs.Count} of "
            + $"{discs.Cloth.Name}, lap {Mm(discs.Lap)}"));
        if (end.Closure.Opening.Meters > 0) marks.Add((s.CrownMm - (s.ThickMm / 2), end.Closure.Opening.Millimeters / 2, "opening",
            Mm(end.Closure.Opening)));
        if (end.Fitting is { } fitting)
        {
            marks.Add((s.FittingToMm - 3, (s.FittingMm + (passage?.Millimeters / 2 ?? 0)) / 2, fitting.Name, Size(fitting, passage)));
            if (fitting.Seal is { } own) marks.Add((s.FittingSealAtMm, s.FittingMm + 1.2, $"{own.Name} of the fitting", Holds(own)));
        }
        else if (end.Closure.Opening.Meters > 0) marks.Add((s.CrownMm, 0, "fitting", "not given"));

        var ordered = marks.OrderBy(m => m.X).ToList();
        var step = Math.Min(12, (Paper - 12) / Math.Max(1, ordered.Count));
        var from = at.X((s.FirstMm + s.LastMm) / 2) - (step * (ordered.Count - 1) / 2);
        from = Math.Clamp(from, 6, Paper - 6 - (step * (ordered.Count - 1)));
        for (var i = 0; i < ordered.Count; i++)
        {
            var m = ordered[i];
            key.Point(sheet, at.X(m.X), at.Y(m.R), from + (i * step), 14, m.Name, m.What);
        }
    }

    private static string Holds(Seal seal) => seal.HoldsTo is { } p ? $"holds to {p}" : "what it holds isn't given";

    private static string Size(Fitting fitting, Length? passage)
    {
        var size = fitting switch
        {
            ThreadedFitting t => $"thread ⌀ {Mm(t.Nominal)} × {Mm(t.Pitch)}, {Mm(t.Engagement)} engaged"
                + (t.Boss is { } boss ? $", boss ⌀ {Mm(boss)}" : ""),
            ShoulderedFitting t => $"shoulder {Mm(t.Shoulder)} thick, ⌀ {Mm(t.ShoulderDiameter)}, inside",
            BondedFitting t => $"{t.Adhesive.Name}, {Mm(t.Overlap)} overlap",
            ClampedFitting t => $"thread ⌀ {Mm(t.Nominal)}, flange ⌀ {Mm(t.FlangeDiameter)} {(t.FlangeInside ? "inside" : "outside")}",
            _ => "",
        };
        return passage is { } bore ? $"{size}, throat {Mm(bore)}" : size;
    }

    private static string Mm(Length length) => $"{Digits.Round(length.Millimeters)} mm";
}
