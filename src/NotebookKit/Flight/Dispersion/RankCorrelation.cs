using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>Spearman's rank correlation, ties sharing their mean rank.</summary>
internal static class RankCorrelation
{
    public static double[] Ranks(IReadOnlyList<double> values)
    {
        WorkRun.Current.ThrowIfStopped();
        var order = new int[values.Count];
        var keys = new double[values.Count];
        for (var i = 0; i < order.Length; i++) (order[i], keys[i]) = (i, values[i]);
        Array.Sort(keys, order);
        var ranks = new double[order.Length];
        for (var i = 0; i < order.Length;)
        {
            var end = i + 1;
            while (end < order.Length && keys[end] == keys[i]) end++;
            var rank = (i + end - 1) / 2.0;
            for (; i < end; i++) ranks[order[i]] = rank;
        }

        return ranks;
    }

    /// <summary>Correlation of two columns of ranks [-]; zero where one doesn't vary.</summary>
    public static double Of(double[] first, double[] second)
    {
        var middle = (first.Length - 1) / 2.0;
        double product = 0, square1 = 0, square2 = 0;
        for (var i = 0; i < first.Length; i++)
        {
            var (a, b) = (first[i] - middle, second[i] - middle);
            product += a * b;
            square1 += a * a;
            square2 += b * b;
        }

        return square1 > 0 && square2 > 0 ? product / Math.Sqrt(square1 * square2) : 0;
    }

    /// <summary>How far each input sways an output, the strongest first; nothing where nothing varies.</summary>
    /// <param name="inputs">Inputs, a row for every flight.</param>
    /// <param name="flown">Rows that have an output.</param>
    /// <param name="output">The output of those rows.</param>
    public static IReadOnlyList<Sensitivity> Correlate(IReadOnlyList<Series> inputs, int[] flown, double[] output) =>
        Correlate(inputs, Ranks(inputs, flown), output);

    /// <summary>Ranks of the inputs over some of the rows, for several outputs of the same rows.</summary>
    public static double[][] Ranks(IReadOnlyList<Series> inputs, int[] flown) =>
        [.. inputs.Select(s => Ranks(Array.ConvertAll(flown, i => s[i])))];

    /// <summary>The same with the ranks of the inputs at hand.</summary>
    public static IReadOnlyList<Sensitivity> Correlate(IReadOnlyList<Series> inputs, double[][] inputRanks, double[] output)
    {
        var ranks = Ranks(output);
        var found = inputs.Select((s, i) => (s.Name, Correlation: Of(inputRanks[i], ranks))).ToArray();
        var sum = found.Sum(f => f.Correlation * f.Correlation);
        return sum == 0 ? [] : [.. found.Where(f => f.Correlation != 0)
            .Select(f => new Sensitivity(f.Name, f.Correlation, Ratio.FromPercent(100 * f.Correlation * f.Correlation / sum)))
            .OrderByDescending(s => Math.Abs(s.Correlation))];
    }
}
