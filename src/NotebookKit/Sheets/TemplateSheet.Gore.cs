using NotebookKit.Building.Nests;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Sheets;

/// <content>The pattern of a canopy's gore: the sewing line, and the cutting line outside it.</content>
public sealed partial record TemplateSheet
{
    // Common practice, no source: a flat-felled seam takes a centimetre on each side, a folded hem the same.
    private static readonly Length Seam = 10.Millimetres();

    private static Template Gore(CanopyGore gore, Canopy canopy)
    {
        List<(double X, double Y)> sewn = [.. gore.Outline().Select(p => (p.Along.Millimeters, p.Across.Millimeters))];
        var cut = Outside(sewn, Seam.Millimeters);
        var (left, low) = (cut.Min(p => p.X), cut.Min(p => p.Y));
        var (length, width) = (cut.Max(p => p.X) - left, cut.Max(p => p.Y) - low);
        SheetPoint At((double X, double Y) p) => Point(p.X - left, p.Y - low);
        var (from, to) = (0.35 * gore.Height.Millimeters, 0.65 * gore.Height.Millimeters);
        var count = gore.Count * canopy.Count;
        return new($"gore of the canopy, cut {count}", $"{gore.Count} make a canopy of {canopy.NominalDiameter.Show()} by the area of its "
            + $"cloth. Cut along the outer line, sew along the broken one, {Seam.Show()} inside it (common practice, no source). "
            + $"{Digits.Round(gore.SkirtWidth.Millimeters, 4)} mm at the skirt, {Digits.Round(gore.Height.Millimeters, 4)} mm from apex to "
            + "skirt. The arrow lies along the warp.", Mm(length), Mm(width))
        {
            Lines =
            [
                new([.. cut.Select(At)], TemplateLineKind.Cut, IsClosed: true),
                new([.. sewn.Select(At)], TemplateLineKind.Mark, IsClosed: true),
                new([At((from, 0)), At((to, 0))], TemplateLineKind.Grain),
            ],
            Words = [new(At(((from + to) / 2, 5)), "warp"), new(At((0.9 * gore.Height.Millimeters, 5)), "skirt")],
        };
    }

    // Parallel to a convex outline that runs from the apex down the positive side. A sharp corner, the apex, is cut off square at
    // the same distance.
    private static List<(double X, double Y)> Outside(List<(double X, double Y)> line, double by)
    {
        var normals = line.Select((p, i) =>
        {
            var next = line[(i + 1) % line.Count];
            var (dx, dy) = (next.X - p.X, next.Y - p.Y);
            var size = double.Hypot(dx, dy);
            return (X: -dy / size, Y: dx / size);
        }).ToList();
        List<(double X, double Y)> outside = [];
        for (var i = 0; i < line.Count; i++)
        {
            var (before, after) = (normals[(i + line.Count - 1) % line.Count], normals[i]);
            var (x, y) = (before.X + after.X, before.Y + after.Y);
            var along = (x * after.X) + (y * after.Y);
            if (along > 0.6)
            {
                outside.Add((line[i].X + (by * x / along), line[i].Y + (by * y / along)));
                continue;
            }
            var size = double.Hypot(x, y);
            var (nx, ny) = (x / size, y / size);
            // Where the square cut meets each of the two parallel lines.
            foreach (var normal in new[] { before, after })
            {
                var cos = (nx * normal.X) + (ny * normal.Y);
                var (tx, ty) = (-ny, nx);
                var slide = by * (1 - cos) / ((tx * normal.X) + (ty * normal.Y));
                outside.Add((line[i].X + (by * nx) + (slide * tx), line[i].Y + (by * ny) + (slide * ty)));
            }
        }

        return outside;
    }
}
