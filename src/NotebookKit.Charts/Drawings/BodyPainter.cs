using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Drawings;

/// <summary>Body, vessel, water and fins of a side view.</summary>
internal static class BodyPainter
{
    public static void Paint(SvgSheet sheet, DrawingModel model, SideView view, double axis)
    {
        Fins(sheet, model, view, axis, near: false);
        sheet.Open("body", ("scale", view.Scale), ("length-mm", model.Length.Millimeters), ("diameter-mm", model.Diameter.Millimeters));
        Body(sheet, model, view, axis);
        sheet.Close();
        Vessel(sheet, model, view, axis);
        Fins(sheet, model, view, axis, near: true);
        if (view.Broken) Break(sheet, view, axis, model);
        sheet.Line(view.Left - 4, axis, view.X(model.Outline[^1].Station.Millimeters) + 4, axis, SvgSheet.Thin, Palette.Ink,
            SvgSheet.CentreLine);
    }

    private static void Body(SvgSheet sheet, DrawingModel model, SideView view, double axis)
    {
        var upper = model.Outline.Select(p => (X: view.X(p.Station.Millimeters), Y: axis - view.Size(p.Radius.Millimeters))).ToList();
        var lower = upper.Select(p => (p.X, Y: (2 * axis) - p.Y)).Reverse();
        sheet.Path(upper.Concat(lower), closed: true, fill: Palette.Paper);
        for (var i = 1; i + 1 < upper.Count; i++)
        {
            // A crease between parts is drawn; the facets of a smooth nose are not.
            var turn = Math.Abs(Angle(upper[i], upper[i + 1]) - Angle(upper[i - 1], upper[i]));
            if (turn > 0.12) sheet.Line(upper[i].X, upper[i].Y, upper[i].X, (2 * axis) - upper[i].Y);
        }

        static double Angle((double X, double Y) a, (double X, double Y) b) => Math.Atan2(b.Y - a.Y, b.X - a.X);
    }

    private static void Vessel(SvgSheet sheet, DrawingModel model, SideView view, double axis)
    {
        if (model.Vessel.Count < 2) return;
        if (model.WaterLevel is { } level) Water(sheet, model, view, axis, level.Millimeters);
        var upper = model.Vessel.Select(p => (X: view.X(p.Station.Millimeters), Y: axis - view.Size(p.Radius.Millimeters))).ToList();
        sheet.Path(upper.Concat(upper.Select(p => (p.X, Y: (2 * axis) - p.Y)).Reverse()), closed: true, width: SvgSheet.Thin,
            dash: SvgSheet.Hidden);
    }

    private static void Water(SvgSheet sheet, DrawingModel model, SideView view, double axis, double levelMm)
    {
        var aft = model.Vessel[^1].Station.Millimeters;
        var start = Math.Clamp(levelMm, model.Vessel[0].Station.Millimeters, aft);
        sheet.Open("water", ("level-mm", levelMm), ("aft-mm", aft));
        List<(double X, double Y)> upper = [(view.X(start), axis - view.Size(SideView.RadiusAt(model.Vessel, start)))];
        upper.AddRange(model.Vessel.Where(p => p.Station.Millimeters > start).Select(p => (view.X(p.Station.Millimeters),
            axis - view.Size(p.Radius.Millimeters))));
        var outline = upper.Concat(upper.Select(p => (p.X, Y: (2 * axis) - p.Y)).Reverse()).ToList();
        sheet.Path(outline, closed: true, width: 0, fill: Palette.Tint(Palette.Water, 0.22));
        // Broken strokes along the axis stand for a liquid; neighbouring rows are shifted against each other.
        var reach = upper.Max(p => axis - p.Y);
        var row = 0;
        for (var y = -reach + 0.8; y < reach; y += 1.4)
        {
            var inside = Enumerable.Range(0, 201).Select(i => start
                + ((aft - start) * i / 200)).Where(s => view.Size(SideView.RadiusAt(model.Vessel, s)) > Math.Abs(y) + 0.2).ToList();
            if (inside.Count > 1) sheet.Line(view.X(inside[0]) + (row % 2 == 0 ? 0.6 : 2.4), axis + y, view.X(inside[^1]) - 0.4, axis + y,
                SvgSheet.Thin, Palette.Water, "2.4 1.4");
            row++;
        }
        sheet.Line(view.X(start), upper[0].Y, view.X(start), (2 * axis) - upper[0].Y, SvgSheet.Thick * 0.8, Palette.Water);
        sheet.Close();
    }

    private static void Fins(SvgSheet sheet, DrawingModel model, SideView view, double axis, bool near)
    {
        foreach (var fin in model.Fins)
        {
            for (var k = 0; k < fin.Count; k++)
            {
                var (across, up) = Math.SinCos(2 * Math.PI * k / fin.Count);
                // The viewer stands at the side: fins that point at him are drawn over the body.
                if ((across > 1e-9) != near) continue;
                var edgeOn = view.Size(fin.Thickness.Millimeters) / 2;
                var corners = fin.Corners.Select(c => (X: view.X(c.Station.Millimeters),
                    Y: axis - (up * view.Size(c.Radius.Millimeters)))).ToList();
                if (Math.Abs(up) < 1e-9)
                    corners = [(corners.Min(c => c.X), axis - edgeOn), (corners.Max(c => c.X), axis - edgeOn),
                        (corners.Max(c => c.X), axis + edgeOn), (corners.Min(c => c.X), axis + edgeOn)];
                sheet.Open("fin");
                sheet.Path(corners, closed: true, width: SvgSheet.Thick * 0.8, fill: Palette.Paper);
                sheet.Close();
            }
        }
    }

    // Two wavy thin edges with blank paper between them.
    private static void Break(SvgSheet sheet, SideView view, double axis, DrawingModel model)
    {
        var (from, to) = view.BreakOnPaper;
        var reach = view.Size(SideView.RadiusAt(model.Outline, view.BreakFromMm)) + 1.5;
        sheet.Open("break", ("from-mm", view.BreakFromMm), ("to-mm", view.BreakToMm));
        sheet.Rectangle(from, axis - reach, to - from, 2 * reach, Palette.Paper, stroke: 0);
        foreach (var x in new[] { from, to })
            sheet.Path(Enumerable.Range(0, 25).Select(i => (x + (0.7 * Math.Sin(i * Math.PI / 6)), axis - reach + (2 * reach * i / 24))),
                closed: false, width: SvgSheet.Thin);
        sheet.Close();
    }
}
