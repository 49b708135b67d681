using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Samples a curve at equal shares of a stretch, so that point i of two curves means the same.</summary>
internal static class CurveSampling
{
    /// <summary>Values at equal shares between two horizontal values, straight between rows.</summary>
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
        return (xs, ys);
    }
}
