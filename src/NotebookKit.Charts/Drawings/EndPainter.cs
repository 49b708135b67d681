using NotebookKit.Charts.Theme;
using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>Fills the profile of an end: each part with its own hatch, so that parts stay apart without colour.</summary>
internal static class EndPainter
{
    public static void Paint(SvgSheet sheet, VesselEnd end, EndSection s, EndPlace at, Length? passage)
    {
        Both(sheet, at, "liner", [(s.FirstMm, s.BoreMm), (0, s.BoreMm), (0, s.LinerMm), (s.FirstMm, s.LinerMm)],
            Palette.Tint(Palette.Water, 0.35));
        Wall(sheet, s, at);
        Closure(sheet, end, s, at);
        if (end.CarriesSleeves) Sleeve(sheet, end, s, at);
        if (end.Discs is { } discs) Discs(sheet, discs.Lap.Millimeters, s, at);
        foreach (var plug in end.Joints.OfType<BondedPlug>()) Plug(sheet, plug, s, at);
        foreach (var boss in end.Joints.OfType<ThreadedBoss>()) Thread(sheet, at, -boss.Engagement.Millimeters, 0,
            boss.PitchDiameter.Millimeters / 2);
        if (end.Fitting is { } fitting) Fitting(sheet, fitting, s, at, passage);
        if (end.Seal is { } seal) Seal(sheet, at, seal, -4, s.BoreMm);
        if (end.Fitting?.Seal is { } own) Seal(sheet, at, own, s.FittingSealAtMm, s.FittingMm + 1.2);
    }

    private static void Wall(SvgSheet sheet, EndSection s, EndPlace at)
    {
        Both(sheet, at, "plies", [(s.FirstMm, s.LinerMm), (0, s.LinerMm), (0, s.WallMm), (s.FirstMm, s.WallMm)],
            Palette.Tint(Palette.Ink, 0.16));
        for (var x = s.FirstMm + 1; x < -1; x += 3)
        {
            Pair(sheet, at, x, s.LinerMm, x + 1.6, s.WallMm);
            Pair(sheet, at, x + 1.6, s.LinerMm, x, s.WallMm);
        }
    }

    private static void Closure(SvgSheet sheet, VesselEnd end, EndSection s, EndPlace at)
    {
        var hole = end.Closure.Opening.Millimeters / 2;
        List<(double, double)> outer = [], inner = [];
        // By angle, so that the crown of a dome is as smooth as its rim.
        for (var i = 0; i <= 40; i++)
        {
            var share = Math.Sin(Math.PI / 2 * i / 40);
            var (o, n) = (share * s.CrownMm, share * s.DepthMm);
            if (end.Closure is FlatClosure) (o, n) = (s.ThickMm, 0);
            if (s.OuterAt(o) >= hole) outer.Add((o, end.Closure is FlatClosure ? s.BoreMm * (1 - (i / 40.0)) : s.OuterAt(o)));
            if (s.InnerAt(n) >= hole) inner.Add((n, end.Closure is FlatClosure ? s.BoreMm * (1 - (i / 40.0)) : s.InnerAt(n)));
        }

        outer = [.. outer.Where(p => p.Item2 >= hole)];
        inner = [.. inner.Where(p => p.Item2 >= hole)];
        outer.Add((end.Closure is FlatClosure ? s.ThickMm : s.CrownMm * Math.Sqrt(1 - Math.Pow(hole / (s.BoreMm + s.ThickMm), 2)), hole));
        inner.Add((end.Closure is FlatClosure ? 0 : s.DepthMm * Math.Sqrt(1 - Math.Pow(hole / s.BoreMm, 2)), hole));
        if (end.Closure is ConicalClosure) (outer[^1], inner[^1]) = ((s.DepthMm, hole), (s.DepthMm, hole));
        Both(sheet, at, "closure", [.. outer, .. Enumerable.Reverse(inner)], Palette.Tint(Palette.Data[0], 0.14));
        for (var i = 2; i < Math.Min(outer.Count, inner.Count); i += 3) Pair(sheet, at, inner[i].Item1, inner[i].Item2, outer[i - 1].Item1,
            outer[i - 1].Item2);
        if (end.Fitting is ThreadedFitting { Boss: { } boss } thread)
        {
            var (radius, to) = (boss.Millimeters / 2, s.DepthMm + Math.Max(s.ThickMm, thread.Engagement.Millimeters));
            Both(sheet, at, "boss", [(s.CrownMm * 0.96, s.FittingMm), (to, s.FittingMm), (to, radius), (s.CrownMm * 0.9, radius)],
                Palette.Tint(Palette.Data[0], 0.14));
        }
    }

    private static void Sleeve(SvgSheet sheet, VesselEnd end, EndSection s, EndPlace at)
    {
        List<(double, double)> under = [(-8, s.LinerMm)], over = [(-8, s.LinerMm + s.SleeveMm)];
        for (var i = 0; i <= 24; i++)
        {
            var x = s.NeckFromMm * i / 24;
            under.Add((x, s.OuterAt(x)));
            over.Add((x, s.SleeveAt(x)));
        }

        if (s.TailMm > 0)
        {
            under.AddRange([(s.NeckFromMm, s.NeckMm), (s.NeckFromMm + s.TailMm, s.NeckMm)]);
            over.AddRange([(s.NeckFromMm + s.SleeveMm, s.NeckMm + s.SleeveMm), (s.NeckFromMm + s.TailMm, s.NeckMm + s.SleeveMm)]);
            // The neck under the tail: its outside is given, its wall is not.
            Pair(sheet, at, s.NeckFromMm, s.NeckMm, s.NeckFromMm + s.TailMm, s.NeckMm, SvgSheet.Thick);
            Pair(sheet, at, s.NeckFromMm, s.NeckMm - 3, s.NeckFromMm + s.TailMm, s.NeckMm - 3, SvgSheet.Thin, SvgSheet.Hidden);
            Pair(sheet, at, s.NeckFromMm + s.TailMm, s.NeckMm - 3, s.NeckFromMm + s.TailMm, s.NeckMm, SvgSheet.Thin, SvgSheet.Hidden);
        }

        Both(sheet, at, "sleeve", [.. under, .. Enumerable.Reverse(over)], Palette.Tint(Palette.Ink, 0.3));
        if (!end.Joints.OfType<CarriedSleeve>().First().IsTiedOff || s.TailMm <= 0) return;
        for (var i = 0; i < 5; i++)
        {
            var (x, r) = (s.NeckFromMm + (s.TailMm * (0.72 + (0.04 * i))), s.NeckMm + s.SleeveMm + 0.9);
            sheet.Circle(at.X(x), at.Y(r), 0.75 * at.Scale, SvgSheet.Thin, Palette.Ink);
            sheet.Circle(at.X(x), at.Mirror(r), 0.75 * at.Scale, SvgSheet.Thin, Palette.Ink);
        }
    }

    private static void Discs(SvgSheet sheet, double lapMm, EndSection s, EndPlace at)
    {
        var from = Math.Max(s.FirstMm + 2, -lapMm);
        List<(double, double)> line = [(from, s.WallMm + 1)];
        for (var i = 0; i <= 24; i++)
        {
            var x = s.CrownMm * Math.Sin(Math.PI / 2 * i / 24);
            line.Add((x, Math.Max(s.SleeveAt(x) + 1, 0)));
        }

        sheet.Open("discs");
        sheet.Path(line.Select(p => (at.X(p.Item1), at.Y(p.Item2))), closed: false, width: 1.1, dash: "3 1");
        sheet.Path(line.Select(p => (at.X(p.Item1), at.Mirror(p.Item2))), closed: false, width: 1.1, dash: "3 1");
        sheet.Close();
    }

    private static void Plug(SvgSheet sheet, BondedPlug plug, EndSection s, EndPlace at)
    {
        var (skirt, bond) = (plug.SkirtWall.Millimeters, Math.Max(plug.BondLine.Millimeters * EndDrawing.Thicker, 0.6));
        Both(sheet, at, "skirt", [(-s.OverlapMm, s.BoreMm - bond - skirt), (0, s.BoreMm - bond - skirt), (0, s.BoreMm - bond),
            (-s.OverlapMm, s.BoreMm - bond)], Palette.Tint(Palette.Data[0], 0.14));
        Both(sheet, at, "bond", [(-s.OverlapMm, s.BoreMm - bond), (0, s.BoreMm - bond), (0, s.BoreMm), (-s.OverlapMm, s.BoreMm)],
            Palette.Data[6]);
    }

    private static void Fitting(SvgSheet sheet, Fitting fitting, EndSection s, EndPlace at, Length? passage)
    {
        var bore = passage is { } p ? Math.Min(p.Millimeters / 2, s.FittingMm - 0.5) : 0;
        List<(double, double)> body = [(s.FittingFromMm, bore), (s.FittingToMm, bore), (s.FittingToMm, s.FittingMm),
            (s.FittingFromMm, s.FittingMm)];
        if (fitting is ThreadedFitting)
            body = [(s.FittingFromMm, bore), (s.FittingToMm, bore), (s.FittingToMm, s.FittingMm + 3),
                (s.FittingSealAtMm + 1, s.FittingMm + 3), (s.FittingSealAtMm + 1, s.FittingMm), (s.FittingFromMm, s.FittingMm)];
        if (fitting is ShoulderedFitting shoulder)
        {
            var (back, radius) = (s.DepthMm - shoulder.Shoulder.Millimeters, shoulder.ShoulderDiameter.Millimeters / 2);
            body = [(back, bore), (s.FittingToMm, bore), (s.FittingToMm, s.FittingMm), (s.DepthMm, s.FittingMm), (s.DepthMm, radius),
                (back, radius)];
        }

        Both(sheet, at, "fitting", [.. body], Palette.Tint(Palette.Data[1], 0.25));
        for (var x = s.FittingFromMm + 1; x < s.FittingToMm - 2; x += 2.4) Pair(sheet, at, x + 1.8, bore, x, s.FittingMm);
        switch (fitting)
        {
            case ThreadedFitting t:
                Thread(sheet, at, s.FittingFromMm, s.FittingFromMm + t.Engagement.Millimeters, s.FittingMm);
                break;
            case ClampedFitting c:
                var radius = c.FlangeDiameter.Millimeters / 2;
                var back = c.FlangeInside ? s.DepthMm - c.Flange.Millimeters : s.CrownMm;
                Both(sheet, at, "flange", [(back, s.FittingMm), (back + c.Flange.Millimeters, s.FittingMm),
                    (back + c.Flange.Millimeters, radius), (back, radius)], Palette.Tint(Palette.Data[1], 0.25));
                Thread(sheet, at, s.CrownMm, s.CrownMm + c.NutHeight.Millimeters, s.FittingMm);
                break;
            case BondedFitting b:
                Both(sheet, at, "bond", [(s.CrownMm - b.Overlap.Millimeters, s.FittingMm - 0.6), (s.CrownMm, s.FittingMm - 0.6),
                    (s.CrownMm, s.FittingMm), (s.CrownMm - b.Overlap.Millimeters, s.FittingMm)], Palette.Data[6]);
                break;
        }
    }

    // Teeth, larger than a thread's and as many as can be told apart.
    private static void Thread(SvgSheet sheet, EndPlace at, double from, double to, double radius)
    {
        var teeth = Math.Max(3, (int)((to - from) / 1.5));
        var points = Enumerable.Range(0, (2 * teeth) + 1).Select(i => (X: from + ((to - from) * i / (2.0 * teeth)),
            R: radius + (i % 2 == 0 ? -0.6 : 0.6))).ToList();
        sheet.Open("thread");
        sheet.Path(points.Select(p => (at.X(p.X), at.Y(p.R))), closed: false, width: SvgSheet.Thick * 0.8);
        sheet.Path(points.Select(p => (at.X(p.X), at.Mirror(p.R))), closed: false, width: SvgSheet.Thick * 0.8);
        sheet.Close();
    }

    private static void Seal(SvgSheet sheet, EndPlace at, Seal seal, double along, double radius)
    {
        sheet.Open("seal");
        foreach (var y in new[] { at.Y(radius), at.Mirror(radius) })
        {
            if (seal.Kind == SealKind.ORing) sheet.Circle(at.X(along), y, 1.1 * at.Scale, width: 0, fill: Palette.Ink);
            else sheet.Line(at.X(along - 2), y, at.X(along + 2), y, 1.2, Palette.Ink, seal.Kind == SealKind.Tape ? "1 0.6" : "");
        }

        sheet.Close();
    }

    private static void Both(SvgSheet sheet, EndPlace at, string name, IReadOnlyList<(double Along, double Radius)> points, string fill)
    {
        sheet.Open(name);
        sheet.Path(points.Select(p => (at.X(p.Along), at.Y(p.Radius))), closed: true, SvgSheet.Thick * 0.7, fill: fill);
        sheet.Path(points.Select(p => (at.X(p.Along), at.Mirror(p.Radius))), closed: true, SvgSheet.Thick * 0.7, fill: fill);
        sheet.Close();
    }

    private static void Pair(SvgSheet sheet, EndPlace at, double x1, double r1, double x2, double r2, double width = SvgSheet.Thin,
        string dash = "")
    {
        sheet.Line(at.X(x1), at.Y(r1), at.X(x2), at.Y(r2), width, dash: dash);
        sheet.Line(at.X(x1), at.Mirror(r1), at.X(x2), at.Mirror(r2), width, dash: dash);
    }
}
