using NotebookKit.Charts.Marks;

namespace NotebookKit.Charts.Figures;

/// <summary>Which names beside points are written, and on which side, so that they neither cross nor run out of the frame; the others are
/// seen when pointed at.</summary>
internal static class PointLabels
{
    // A name is about a third of the frame wide and a sixteenth of it high.
    private const double Wide = 0.34, High = 0.065;

    /// <summary>For each point: 0 where its name isn't written, else −1, 1 or 2 for left, right or over it.</summary>
    /// <param name="points">The points.</param>
    public static int[] Sides(Points points)
    {
        var sides = new int[points.X.Count];
        if (!points.LabelsShown || points.Labels.Count == 0) return sides;
        var (x, y) = (Shares(points.X.Values), Shares(points.Y.Values));
        for (var i = 0; i < sides.Length; i++)
        {
            var crowded = Enumerable.Range(0, i).Any(j => sides[j] != 0 && Math.Abs(x[i] - x[j]) < Wide && Math.Abs(y[i] - y[j]) < High);
            if (!crowded && double.IsFinite(x[i]) && double.IsFinite(y[i])) sides[i] = x[i] < 0.2 ? 1 : x[i] > 0.8 ? -1 : 2;
        }

        return sides;
    }

    private static double[] Shares(IReadOnlyList<double> values)
    {
        var known = values.Where(double.IsFinite).DefaultIfEmpty(0).ToList();
        var (low, range) = (known.Min(), Math.Max(known.Max() - known.Min(), double.Epsilon));
        return [.. values.Select(v => (v - low) / range)];
    }
}
