using Deedle;

namespace NotebookKit.Logs;

/// <summary>Readings at other times than their own, by Deedle: drawn straight from neighbour to neighbour.</summary>
internal static class Resampling
{
    /// <summary>The readings at given times; not-a-number before the first and after the last by more than the reach, and inside a gap
    /// between readings that is longer than allowed.</summary>
    /// <param name="at">Times [s], rising.</param>
    /// <param name="times">Times of the readings [s], rising; at least one.</param>
    /// <param name="values">Readings.</param>
    /// <param name="reach">How long the first and the last reading stand for their neighbours [s]; below 0 not at all.</param>
    /// <param name="longestGap">Longest gap that is drawn over [s].</param>
    public static double[] Straight(
        IReadOnlyList<double> at, double[] times, double[] values, double reach, double longestGap = double.PositiveInfinity)
    {
        var (first, last) = (times[0], times[^1]);
        if (times.Length == 1) return [.. at.Select(t => Math.Abs(t - first) <= Math.Max(reach, 0) ? values[0] : double.NaN)];
        var drawn = new Series<double, double>(times, values)
            .InterpolateLinearWith(at, (later, earlier) => later - earlier, Extrapolation.Clamp).ValuesAll.ToArray();
        var next = 0;
        for (var i = 0; i < at.Count; i++)
        {
            while (next < times.Length && times[next] < at[i]) next++;
            var isOutside = at[i] < first ? first - at[i] > reach : at[i] > last && at[i] - last > reach;
            var isInGap = next > 0 && next < times.Length && times[next] > at[i] && times[next] - times[next - 1] > longestGap;
            if (isOutside || isInGap) drawn[i] = double.NaN;
        }

        return drawn;
    }
}
