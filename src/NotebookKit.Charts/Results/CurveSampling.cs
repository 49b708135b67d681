using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Samples a curve at equal shares of a stretch, so that point i of two curves means the same.</summary>
internal static class CurveSampling
{
    /// <summary>Values at equal shares between two horizontal values, straight between rows. The samples nearest to the highest and the
    /// lowest row move there, so that no peak is cut flat.</summary>
    public static (double[] X, double[] Y) Between(Series x, Series y, double from, double to, int points)
    {
        var xs = new double[points];
        var ys = new double[points];
        var row = 0;
        for (var i = 0; i < points; i++)
        {
            xs[i] = from + ((to - from) * i / (points - 1));
            while (row + 2 < x.Count && x[row + 1] < xs[i]) row++;
            var span = x[row + 1] - x[row];
            ys[i] = y[row] + (span > 0 ? Math.Clamp((xs[i] - x[row]) / span, 0, 1) * (y[row + 1] - y[row]) : 0);
        }
        Keep(xs, ys, x, y, (a, b) => a > b);
        Keep(xs, ys, x, y, (a, b) => a < b);
        return (xs, ys);
    }

    private static void Keep(double[] xs, double[] ys, Series x, Series y, Func<double, double, bool> beyond)
    {
        var row = -1;
        for (var i = 0; i < x.Count; i++)
            if (x[i] > xs[0] && x[i] < xs[^1] && double.IsFinite(y[i]) && (row < 0 || beyond(y[i], y[row]))) row = i;
        if (row < 0) return;
        var near = (int)Math.Round((x[row] - xs[0]) / (xs[^1] - xs[0]) * (xs.Length - 1));
        if (near > 0 && near < xs.Length - 1 && ys.All(v => beyond(y[row], v))) (xs[near], ys[near]) = (x[row], y[row]);
    }
}
