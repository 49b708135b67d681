using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>Where a map has a given value: the edge of what is allowed. Linear interpolation along the edges of the grid.</summary>
internal static class LevelLine
{
    /// <summary>The line in pieces, parted by gaps; no points where the map doesn't reach the value.</summary>
    public static (Series X, Series Y) Of(Field field, double level)
    {
        List<double> xs = [], ys = [];
        foreach (var piece in Join(Segments(field, level)))
        {
            if (xs.Count > 0)
            {
                xs.Add(double.NaN);
                ys.Add(double.NaN);
            }
            xs.AddRange(piece.Select(p => p.X));
            ys.AddRange(piece.Select(p => p.Y));
        }
        return (field.X with { Values = xs }, field.Y with { Values = ys });
    }

    private static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Segments(Field field, double level) =>
        from row in Enumerable.Range(0, field.Y.Count - 1)
        from column in Enumerable.Range(0, field.X.Count - 1)
        from segment in Cell(field, level, column, row)
        select segment;

    // Segments of neighbouring cells meet in the very same point, computed from the same two corners.
    private static List<LinkedList<(double X, double Y)>> Join(IEnumerable<((double X, double Y) From, (double X, double Y) To)> segments)
    {
        Dictionary<(double X, double Y), LinkedList<(double X, double Y)>> ends = [];
        List<LinkedList<(double X, double Y)>> pieces = [];
        foreach (var (from, to) in segments)
        {
            if (from == to) continue;
            ends.Remove(from, out var left);
            ends.Remove(to, out var right);
            var piece = left ?? right ?? new LinkedList<(double X, double Y)>([from]);
            if (left is null && right is null)
            {
                piece.AddLast(to);
                pieces.Add(piece);
            }
            else if (left is not null && right is not null && left != right)
            {
                Extend(left, from, right.First!.Value == to ? right : right.Reverse());
                pieces.Remove(right);
            }
            else
            {
                var (end, next) = left is not null ? (from, to) : (to, from);
                Extend(piece, end, [next]);
            }
            ends[piece.First!.Value] = piece;
            ends[piece.Last!.Value] = piece;
        }
        return pieces;
    }

    private static void Extend(LinkedList<(double X, double Y)> piece, (double X, double Y) end, IEnumerable<(double X, double Y)> more)
    {
        var last = piece.Last!.Value == end;
        foreach (var point in more.ToList())
        {
            if (last) piece.AddLast(point);
            else piece.AddFirst(point);
        }
    }

    private static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Cell(Field field, double level, int column, int row)
    {
        var (x0, x1, y0, y1) = (field.X[column], field.X[column + 1], field.Y[row], field.Y[row + 1]);
        var (a, b, c, d) = (field.At(column, row), field.At(column + 1, row), field.At(column + 1, row + 1), field.At(column, row + 1));
        if (!double.IsFinite(a + b + c + d)) yield break;
        List<(double X, double Y)> cuts = [];
        if (Cut(a, b, level) is { } bottom) cuts.Add((x0 + (bottom * (x1 - x0)), y0));
        if (Cut(b, c, level) is { } right) cuts.Add((x1, y0 + (right * (y1 - y0))));
        if (Cut(d, c, level) is { } top) cuts.Add((x0 + (top * (x1 - x0)), y1));
        if (Cut(a, d, level) is { } left) cuts.Add((x0, y0 + (left * (y1 - y0))));
        // A saddle has four cuts: its middle says which belong together.
        if (cuts.Count == 4 && ((a + b + c + d) / 4 > level) != (a > level)) cuts = [cuts[3], cuts[0], cuts[1], cuts[2]];
        for (var i = 0; i + 1 < cuts.Count; i += 2) yield return (cuts[i], cuts[i + 1]);
    }

    private static double? Cut(double from, double to, double level) => (from > level) == (to > level) ? null
        : (level - from) / (to - from);
}
