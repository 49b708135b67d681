using NotebookKit.Quantities;

namespace NotebookKit.Charts.Figures;

/// <summary>
/// Drops points of a long curve that a screen can't show. Of every stretch its lowest and highest value stay, so that no peak is lost.
/// </summary>
internal static class Thinning
{
    public const int MaximumPoints = 4_000;

    public static (double[] X, double[] Y) Keep(Series x, Series y, int most = MaximumPoints)
    {
        var count = y.Count;
        if (count <= most) return ([.. x.Values], [.. y.Values]);
        var stretches = (most - 2) / 2;
        List<int> kept = [0];
        for (var i = 0; i < stretches; i++)
        {
            var from = 1 + (int)((long)i * (count - 2) / stretches);
            var to = 1 + (int)((long)(i + 1) * (count - 2) / stretches);
            var (low, high) = (from, from);
            for (var k = from; k < to; k++)
            {
                // A gap counts as a value of its own: it must stay a gap.
                if (double.IsNaN(y[k])) (low, high) = (k, k);
                if (y[k] < y[low]) low = k;
                if (y[k] > y[high]) high = k;
            }
            kept.Add(Math.Min(low, high));
            if (low != high) kept.Add(Math.Max(low, high));
        }
        kept.Add(count - 1);
        return ([.. kept.Select(k => x[k])], [.. kept.Select(k => y[k])]);
    }
}
