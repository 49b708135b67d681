using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>A piece of a vessel's wall cut across, layer by layer, its thickness drawn larger than its curvature; every layer carries its
/// true thickness.</summary>
public static class LayupDrawing
{
    // On paper [mm]: the wall, its inner radius, and half the angle that is shown.
    private const double Wall = 34;
    private const double Least = 3.4;
    private const double Inner = 74;
    private const double HalfAngle = 0.5;
    private const double Paper = 120;

    /// <summary>Draws the wall.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="innerDiameter">Bore of the liner; above 0.</param>
    /// <param name="layers">Layers from inside out.</param>
    /// <exception cref="InvalidDesignException">No layers, or a size that isn't above zero.</exception>
    public static Drawing Draw(string title, Length innerDiameter, IReadOnlyList<WallLayer> layers)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(layers);
        InvalidDesignException.ThrowIfAny($"Drawing '{title}'", Validate(innerDiameter, layers));
        var sheet = new SvgSheet();
        var total = layers.Sum(l => l.Thickness.Millimeters);
        var drawn = Drawn(layers, total);
        var (cx, cy) = (Paper / 2, 16 + Inner + Wall);
        sheet.Title(title, Paper);
        var numbers = cy - Inner + 40;
        var radius = Inner;
        for (var i = 0; i < layers.Count; i++)
        {
            sheet.Open("layer", ("thickness-mm", layers[i].Thickness.Millimeters), ("drawn-mm", drawn[i]));
            Layer(sheet, layers[i], cx, cy, radius, radius + drawn[i]);
            numbers = Label(sheet, layers[i], i, cx, cy, radius + (drawn[i] / 2), numbers);
            sheet.Close();
            radius += drawn[i];
        }
        sheet.Line(cx, cy - Inner + 24, cx, cy - radius - 4, SvgSheet.Thin, Palette.Ink, SvgSheet.CentreLine);
        sheet.Text(cx, cy - Inner + 12, "inside", "middle", colour: Palette.Quiet);
        sheet.Text(cx, cy - Inner + 18, $"bore ⌀ {Mm(innerDiameter.Millimeters)} mm", "middle");
        var bottom = sheet.Paragraph(4, numbers + 2, $"Wall {Mm(total)} mm in all. Thickness is drawn about "
            + $"{Math.Round(Wall / total):0} times its size, thin layers more; the curvature isn't to scale.", Paper - 8,
            colour: Palette.Quiet);
        var description = $"Bore {Mm(innerDiameter.Millimeters)} mm; from inside out: "
            + $"{string.Join(", ", layers.Select(l => $"{l.Name} {Mm(l.Thickness.Millimeters)} mm"))}; wall {Mm(total)} mm in all.";
        return new Drawing(title, description, sheet.Finish(Paper, bottom, title, description));
    }

    private static List<Finding> Validate(Length innerDiameter, IReadOnlyList<WallLayer> layers)
    {
        List<Finding> findings = [];
        if (innerDiameter.Millimeters is not (> 0 and < double.PositiveInfinity))
            findings.Add(Finding.Error($"Bore is {innerDiameter.Show()}; it must be above 0."));
        if (layers.Count == 0) findings.Add(Finding.Error("There are no layers; give at least one."));
        findings.AddRange(layers.Where(l => l.Thickness.Millimeters
            is not (> 0 and < double.PositiveInfinity)).Select(l
            => Finding.Error($"Layer '{l.Name}' is {l.Thickness.Show()} thick; it must be above 0.")));
        return findings;
    }

    // A veil of some hundredths would vanish: every layer gets a least size, the rest share what is left by their thickness.
    private static double[] Drawn(IReadOnlyList<WallLayer> layers, double total)
    {
        var share = layers.Select(l => Math.Max(Least, Wall * l.Thickness.Millimeters / total)).ToArray();
        var sum = share.Sum();
        return [.. share.Select(s => s * Math.Max(Wall, Least * layers.Count) / sum)];
    }

    private static void Layer(SvgSheet sheet, WallLayer layer, double cx, double cy, double inner, double outer)
    {
        var (fill, ink) = layer.Kind switch
        {
            WallLayerKind.Liner => (Palette.Tint(Palette.Water, 0.25), Palette.Water),
            WallLayerKind.Veil => (Palette.Tint(Palette.At(6), 0.3), Palette.At(4)),
            WallLayerKind.Hoop => (Palette.Tint(Palette.At(2), 0.2), Palette.At(2)),
            WallLayerKind.Cloth => (Palette.Tint(Palette.At(3), 0.15), Palette.At(3)),
            _ => (Palette.Tint(Palette.Ink, 0.13), Palette.Ink),
        };
        sheet.Path(Arc(cx, cy, inner, -HalfAngle, HalfAngle).Concat(Arc(cx, cy, outer, HalfAngle, -HalfAngle)), closed: true, width: 0,
            fill: fill);
        Hatch(sheet, layer.Kind, ink, cx, cy, inner, outer);
        sheet.Path(Arc(cx, cy, inner, -HalfAngle, HalfAngle), closed: false, width: SvgSheet.Thick * 0.8);
        sheet.Path(Arc(cx, cy, outer, -HalfAngle, HalfAngle), closed: false, width: SvgSheet.Thick * 0.8);
    }

    private static void Hatch(SvgSheet sheet, WallLayerKind kind, string ink, double cx, double cy, double inner, double outer)
    {
        var mid = (inner + outer) / 2;
        var step = kind switch { WallLayerKind.Sleeve => 3.4, WallLayerKind.Cloth => 3.4, WallLayerKind.Hoop => 2.2,
            WallLayerKind.Veil => 1.8, _ => 2.6 } / mid;
        for (var a = -HalfAngle + (step / 2); a < HalfAngle - (step / 4); a += step)
        {
            var lean = 0.5 * (outer - inner) / mid;
            switch (kind)
            {
                case WallLayerKind.Sleeve:
                    Stroke(a - lean, inner, a + lean, outer);
                    Stroke(a + lean, inner, a - lean, outer);
                    break;
                case WallLayerKind.Cloth:
                    Stroke(a, inner, a, outer);
                    Stroke(a - (step / 3), mid, a + (step / 3), mid);
                    break;
                case WallLayerKind.Hoop:
                case WallLayerKind.Veil:
                    var (x, y) = At(cx, cy, mid, a);
                    sheet.Circle(x, y, kind == WallLayerKind.Hoop ? 0.55 : 0.25, width: 0, fill: ink);
                    break;
                default:
                    Stroke(a - lean, inner, a + lean, outer);
                    break;
            }
        }

        void Stroke(double a1, double r1, double a2, double r2)
        {
            if (Math.Max(Math.Abs(a1), Math.Abs(a2)) > HalfAngle) return;
            var ((x1, y1), (x2, y2)) = (At(cx, cy, r1, a1), At(cx, cy, r2, a2));
            sheet.Line(x1, y1, x2, y2, SvgSheet.Thin, ink);
        }
    }

    // A figure on the layer, shifted so that thin layers' figures don't touch; its words below.
    private static double Label(SvgSheet sheet, WallLayer layer, int index, double cx, double cy, double radius, double row)
    {
        var number = (index + 1).ToString(CultureInfo.InvariantCulture);
        var (x, y) = At(cx, cy, radius, -HalfAngle + 0.06 + (0.12 * (index % 8)));
        sheet.Circle(x, y, 2.4, SvgSheet.Thin, Palette.Paper);
        sheet.Text(x, y + 1.1, number, "middle", bold: true, halo: false);
        sheet.Circle(6.5, row - 1.1, 2.4, SvgSheet.Thin, Palette.Paper);
        sheet.Text(6.5, row, number, "middle", bold: true, halo: false);
        sheet.Text(Paper - 4, row, $"{Mm(layer.Thickness.Millimeters)} mm", "end", bold: true);
        return sheet.Paragraph(11, row, layer.Name, Paper - 38) + 1.4;
    }

    private static IEnumerable<(double X, double Y)> Arc(double cx, double cy, double radius, double from, double to) =>
        Enumerable.Range(0, 41).Select(i => At(cx, cy, radius, from + ((to - from) * i / 40)));

    private static (double X, double Y) At(double cx, double cy, double radius, double angle)
        => (cx + (radius * Math.Sin(angle)), cy - (radius * Math.Cos(angle)));

    private static string Mm(double mm) => mm.ToString(mm < 10 ? "0.##" : "0.#", CultureInfo.InvariantCulture);
}

/// <summary>One layer of a vessel's wall.</summary>
/// <param name="Name">What it is: "PET liner", "carbon sleeve ±46°".</param>
/// <param name="Kind">What it does, which chooses its hatching.</param>
/// <param name="Thickness">Its thickness; above 0.</param>
public sealed record WallLayer(string Name, WallLayerKind Kind, Length Thickness);
