using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Drawings;

/// <summary>
/// A vehicle to scale from the side and from the front, with dimensions, water level, centres of gravity and pressure. Centre of gravity: a
/// filled triangle below the axis, its tip on it. Centre of pressure: an open diamond above the axis. Both are named where they stand and
/// in the legend.
/// </summary>
/// <remarks>Source: line widths and dimensioning after ISO 128-2 and ISO 129-1 (unverified), scales ISO 5455:1979 (unverified).</remarks>
public static class VehicleDrawing
{
    private const double Row = 6.5;

    // A phone's width: the letters of a drawing this wide are some nine pixels high on 360.
    private const double NarrowPaper = 120, NarrowRoom = 98;

    // The wide form is up to 290 mm wide and is shown on 760 px of a desk: these letters are nine pixels high there.
    private const double WideLetters = 3.5;

    /// <summary>Draws the vehicle, nose to the left.</summary>
    /// <param name="model">What to draw.</param>
    /// <exception cref="InvalidDesignException">The model has an error.</exception>
    public static Drawing Draw(DrawingModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        InvalidDesignException.ThrowIfAny($"Drawing '{model.Title}'", model.Validate());
        return new Drawing($"{model.Title}, side and front view", Describe(model), Sheet(model, narrow: false))
        {
            Narrow = Sheet(model, narrow: true),
        };
    }

    private static string Sheet(DrawingModel model, bool narrow)
    {
        var sheet = narrow ? new SvgSheet() : new SvgSheet(WideLetters);
        var view = narrow ? new SideView(model, 8, NarrowRoom) : new SideView(model, 12);
        var reach = view.Size(Reach(model));
        var labels = PlaceLabels(sheet, model, view);
        var top = 13 + (model.CentreOfPressure is null ? 0 : Row) + (Row * 0.8 * (labels.Count == 0 ? 0 : labels.Max(l => l.Row) + 1));
        var axis = top + reach + 3;
        sheet.Text(4, 7, model.Title, size: 4.6, bold: true);
        BodyPainter.Paint(sheet, model, view, axis);
        if (!narrow) FrontView(sheet, model, view, FrontCentre(model, view, reach), axis, reach);
        Labels(sheet, model, view, axis, top, labels);
        Pressure(sheet, model, view, axis, 13 + 1);
        var bottom = BelowBody(sheet, model, view, axis, axis + Math.Max(view.Size(Hang(model)) + 2, 4));
        bottom = Math.Max(bottom, axis + reach + (narrow ? 2 : 13));
        if (narrow)
        {
            FrontView(sheet, model, view, Math.Max(18, reach + 8), bottom + reach + 8, reach);
            bottom += (2 * reach) + 22;
        }

        var width = narrow ? NarrowPaper : Math.Max(FrontCentre(model, view, reach) + reach + 9, 175);
        bottom = Legend(sheet, model, view, bottom + 7, narrow, width);
        return sheet.Finish(width, bottom + 3, $"{model.Title}, to scale", Describe(model));
    }

    private static double Reach(DrawingModel model) =>
        model.Fins.SelectMany(f => f.Corners).Select(c => c.Radius.Millimeters).Append(model.Diameter.Millimeters / 2).Max();

    private static double FrontCentre(DrawingModel model, SideView view, double reach) =>
        view.X(model.Outline[^1].Station.Millimeters) + 26 + reach;

    // How far the fins hang below the axis when one of them points up.
    private static double Hang(DrawingModel model) => model.Fins
        .SelectMany(f => Enumerable.Range(0, f.Count).Select(k => -Math.Cos(2 * Math.PI * k / f.Count) * f.Corners.Max(c =>
            c.Radius.Millimeters)))
        .Append(model.Diameter.Millimeters / 2).Max();

    private static void FrontView(SvgSheet sheet, DrawingModel model, SideView view, double x, double axis, double reach)
    {
        sheet.Open("front");
        foreach (var fin in model.Fins)
        {
            var half = Math.Max(view.Size(fin.Thickness.Millimeters) / 2, 0.15);
            var (root, tip) = (view.Size(fin.Corners.Min(c => c.Radius.Millimeters)),
                view.Size(fin.Corners.Max(c => c.Radius.Millimeters)));
            for (var k = 0; k < fin.Count; k++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * k / fin.Count);
                (double, double) At(double out1, double side) => (x + (out1 * sin) + (side * cos), axis - (out1 * cos) + (side * sin));
                sheet.Path([At(root, -half), At(tip, -half), At(tip, half), At(root, half)], closed: true, width: SvgSheet.Thick * 0.6,
                    fill: Palette.Paper);
            }
        }
        var radius = view.Size(model.Diameter.Millimeters / 2);
        sheet.Circle(x, axis, radius, fill: Palette.Paper);
        sheet.Line(x - reach - 3, axis, x + reach + 3, axis, SvgSheet.Thin, Palette.Ink, SvgSheet.CentreLine);
        sheet.Line(x, axis - reach - 3, x, axis + reach + 3, SvgSheet.Thin, Palette.Ink, SvgSheet.CentreLine);
        var (dx, dy) = (radius * 0.7071, radius * 0.7071);
        sheet.Line(x + dx, axis + dy, x + dx + 3, axis + reach + 4, SvgSheet.Thin);
        sheet.Text(x + dx + 3, axis + reach + 7, $"⌀ {Mm(model.Diameter.Millimeters)}", "middle");
        sheet.Text(x, axis + reach + 12, "front view", "middle", colour: Palette.Quiet);
        sheet.Close();
    }

    private static List<(StationMark Mark, double X, int Row)> PlaceLabels(SvgSheet sheet, DrawingModel model, SideView view)
    {
        List<double> ends = [];
        List<(StationMark, double, int)> placed = [];
        var water = model.WaterLevel is { } level ? [new StationMark("water level", level)] : Array.Empty<StationMark>();
        foreach (var mark in model.Labels.Concat(water).OrderBy(m => m.Station.Millimeters))
        {
            var (x, width) = (view.X(mark.Station.Millimeters), sheet.Wide(mark.Label));
            // A wide name near the nose would leave the paper.
            var middle = Math.Max(x, (width / 2) + 2);
            var row = ends.FindIndex(end => end < middle - (width / 2) - 2);
            if (row < 0)
            {
                ends.Add(0);
                row = ends.Count - 1;
            }
            ends[row] = middle + (width / 2);
            placed.Add((mark, x, row));
        }
        return placed;
    }

    private static void Labels(SvgSheet sheet, DrawingModel model, SideView view, double axis, double top,
        List<(StationMark Mark, double X, int Row)> labels)
    {
        foreach (var (mark, x, row) in labels)
        {
            var y = top - (Row * 0.8 * row);
            var surface = axis - (0.7 * view.Size(SideView.RadiusAt(model.Outline, mark.Station.Millimeters)));
            sheet.Open("named-part");
            sheet.Line(x, y + 1, x, surface);
            sheet.Circle(x, surface, 0.45, width: 0, fill: Palette.Ink);
            sheet.Text(Math.Max(x, (sheet.Wide(mark.Label) / 2) + 2), y, mark.Label, "middle");
            sheet.Close();
        }
    }

    private static void Pressure(SvgSheet sheet, DrawingModel model, SideView view, double axis, double y)
    {
        if (model.CentreOfPressure is not { } station) return;
        var (x, nose) = (view.X(station.Millimeters), view.Left);
        var from = station.Millimeters - model.Outline[0].Station.Millimeters;
        Dimension.Horizontal(sheet, nose, x, y, axis, axis - 4.2, $"CP {Mm(from)}");
        sheet.Open("centre-of-pressure", ("station-mm", station.Millimeters));
        Symbols.Pressure(sheet, x, axis);
        sheet.Text(x + 2.6, axis - 1.4, "CP", bold: true);
        sheet.Close();
    }

    private static double BelowBody(SvgSheet sheet, DrawingModel model, SideView view, double axis, double y)
    {
        var noseMm = model.Outline[0].Station.Millimeters;
        foreach (var fin in model.Fins)
        {
            var low = fin.Corners.Min(c => c.Radius.Millimeters);
            var root = fin.Corners.Where(c => c.Radius.Millimeters <= low + 0.5).Select(c => c.Station.Millimeters).ToList();
            var tip = view.Size(fin.Corners.Max(c => c.Radius.Millimeters));
            var behind = view.X(fin.Corners.Max(c => c.Station.Millimeters));
            Dimension.Vertical(sheet, Math.Max(behind, view.X(model.Outline[^1].Station.Millimeters)) + 7, axis - tip,
                axis - view.Size(low), behind, behind, Mm(fin.Corners.Max(c => c.Radius.Millimeters) - low));
            if (root.Count > 1 && root.Max() > root.Min())
            {
                y += 3;
                Dimension.Horizontal(sheet, view.X(root.Min()), view.X(root.Max()), y, axis + view.Size(low), axis + view.Size(low),
                    Mm(root.Max() - root.Min()));
                y += Row - 3;
            }
        }
        foreach (var mark in model.CentresOfGravity.OrderBy(m => m.Station.Millimeters))
        {
            y += Row - 1;
            var x = view.X(mark.Station.Millimeters);
            Dimension.Horizontal(sheet, view.Left, x, y, axis, axis + 4.4, $"CG {mark.Label} {Mm(mark.Station.Millimeters - noseMm)}");
            sheet.Open("centre-of-gravity", ("station-mm", mark.Station.Millimeters));
            Symbols.Gravity(sheet, x, axis);
            sheet.Close();
        }
        if (model.CentresOfGravity.Count > 0) sheet.Text(view.X(model.CentresOfGravity.Max(m => m.Station.Millimeters)) + 2.4, axis + 3.8,
            "CG", bold: true);
        y += Row;
        var tail = view.X(model.Outline[^1].Station.Millimeters);
        Dimension.Horizontal(sheet, view.Left, tail, y, axis, axis + view.Size(model.Outline[^1].Radius.Millimeters),
            Mm(model.Length.Millimeters));
        return y;
    }

    private static double Legend(SvgSheet sheet, DrawingModel model, SideView view, double y, bool narrow, double paper)
    {
        sheet.Open("legend");
        var x = 6.0;
        if (model.CentresOfGravity.Count > 0) Entry("CG centre of gravity", at => Symbols.Gravity(sheet, at, y - 2.6));
        if (model.CentreOfPressure is not null) Entry("CP centre of pressure", at => Symbols.Pressure(sheet, at, y + 1.0));
        if (model.WaterLevel is not null)
        {
            Entry("water, as it stands on the pad", at =>
            {
                sheet.Rectangle(at - 3, y - 2.4, 6, 3, Palette.Tint(Palette.Water, 0.22), stroke: 0);
                sheet.Line(at - 2.6, y - 1.6, at + 3, y - 1.6, SvgSheet.Thin, Palette.Water, "2.4 1.4");
                sheet.Line(at - 1.4, y - 0.2, at + 3, y - 0.2, SvgSheet.Thin, Palette.Water, "2.4 1.4");
            });
        }
        if (model.Vessel.Count > 1) Entry("inside of the vessel",
            at => sheet.Line(at - 3, y - 0.9, at + 3, y - 0.9, SvgSheet.Thin, Palette.Ink, SvgSheet.Hidden));
        y += 5;
        var scale = view.Scale.ToString("0", CultureInfo.InvariantCulture);
        var note = $"Dimensions in mm. Scale 1:{scale} on paper at full "
            + $"size{(view.Broken ? "; a plain stretch is left out between the wavy lines" : "")}.{Margins(model)}";
        y = sheet.Paragraph(4, y + 1, note, paper - 8, sheet.Letters, Palette.Quiet) - 4;
        sheet.Close();
        return y;

        void Entry(string text, Action<double> symbol)
        {
            if (x > 6 && x + 5.2 + sheet.Wide(text) > paper - 4) (x, y) = (6, y + 6);
            symbol(x + 1);
            sheet.Text(x + 5.2, y, text);
            if (narrow) y += 6;
            else x += 9 + sheet.Wide(text);
        }
    }

    private static string Margins(DrawingModel model)
    {
        if (model.CentreOfPressure is not { } cp || model.CentresOfGravity.Count == 0) return "";
        var margins = model.CentresOfGravity.Select(cg =>
        {
            var calibres = (cp.Millimeters - cg.Station.Millimeters) / model.Diameter.Millimeters;
            return $"{cg.Label} {Digits.Round(calibres, 2)}{(calibres <= 0 ? " (UNSTABLE)" : "")}";
        });
        return $" Static margin in calibres: {string.Join(", ", margins)}.";
    }

    private static string Describe(DrawingModel model)
    {
        var text = $"Overall length {Mm(model.Length.Millimeters)} mm, maximum diameter {Mm(model.Diameter.Millimeters)} mm";
        foreach (var fin in model.Fins) text += $", {fin.Count} fins";
        if (model.CentreOfPressure is { } cp) text += $", centre of pressure {Mm(cp.Millimeters)} mm from the nose tip";
        foreach (var cg in model.CentresOfGravity) text += $", centre of gravity ({cg.Label}) {Mm(cg.Station.Millimeters)} mm";
        if (model.WaterLevel is { } level) text += $", water up to {Mm(level.Millimeters)} mm";
        return text + "." + Margins(model);
    }

    private static string Mm(double mm) => Math.Round(mm, Math.Abs(mm) < 100 ? 1 : 0).ToString("0.#", CultureInfo.InvariantCulture);
}
