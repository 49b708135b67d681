using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>Counts what is wrong with the rows of a log.</summary>
internal static class QualityCount
{
    private const int EqualReadings = 5, SampledIntervals = 20_000;
    private const double SteepSteps = 5;

    public static LogQuality Of(string file, int rows, double[] seconds, ClockOrder order, IReadOnlyList<ValueColumn> columns,
        IReadOnlyList<double[]> values)
    {
        List<Finding> findings = [];
        var usual = Median(seconds);
        int gaps = 0, longest = 0;
        for (var i = 0; i + 1 < seconds.Length; i++)
        {
            if (seconds[i + 1] - seconds[i] > LogQuality.GapIntervals * usual) gaps++;
            if (seconds[i + 1] - seconds[i] > seconds[longest + 1] - seconds[longest]) longest = i;
        }

        var saturated = 0;
        for (var k = 0; k < columns.Count; k++)
        {
            var (here, range) = (0, Range(columns[k], file));
            here = range is { } ends ? values[k].Count(v => v <= ends.Low || v >= ends.High) : Plateau(values[k], columns[k].Unit);
            if (here == 0) continue;
            saturated += here;
            var held = values[k].Where(double.IsFinite).Max();
            findings.Add(Finding.Warning(range is null
                ? $"Column '{Excerpt.Of(columns[k].Header.Name)}' may be saturated: {here} readings in a row stay at an extreme that was "
                    + "reached in one step. To be sure, give the column its \"sensorRange\": \"0 to 100 bar gauge\" in the file of the "
                    + $"log's name with .columns.json behind it, beside the log."
                : $"Column '{Excerpt.Of(columns[k].Header.Name)}' is saturated: {LogQuality.Count(here, "reading")} at or beyond the "
                + $"ends of the sensor's range, up to {Digits.Round(held, 4)} {columns[k].Unit.Canonical}; the true values aren't in the "
                    + $"log."));
        }

        if (order.Duplicates > 0) findings.Add(Finding.Warning(
            $"{LogQuality.Count(order.Duplicates, "row")} had the stamp of the row before; the first of such rows is used"
            + (10 * order.Duplicates > rows ? ". The clock is coarser than the readings; log the time with more digits." : ".")));
        if (order.Strays > 0) findings.Add(Finding.Warning(
            $"{LogQuality.Count(order.Strays, "row")} had an earlier stamp than the rows around; such rows were left out."));
        foreach (var column in columns.Where(c => c.NoReading > 0))
            findings.Add(Finding.Warning($"Column '{Excerpt.Of(column.Header.Name)}' has {LogQuality.Count(column.NoReading, "cell")} "
                + $"without a number, the first in line {column.FirstNoReading}; such cells count as empty."));
        return new(file)
        {
            Rows = rows, RowsUsed = seconds.Length, Interval = Duration.FromSeconds(usual), Gaps = gaps,
            LongestGap = Duration.FromSeconds(seconds[longest + 1] - seconds[longest]),
            LongestGapAt = Duration.FromSeconds(seconds[longest]), DuplicateStamps = order.Duplicates, RowsOutOfOrder = order.Strays,
            Resets = order.Parts.Count - 1, EmptyCells = columns.Sum(c => c.Empty), CellsWithoutNumber = columns.Sum(c => c.NoReading),
            SaturatedReadings = saturated, Findings = findings,
        };
    }

    // Median of all intervals of a short log, of every n-th of a long one.
    private static double Median(double[] seconds)
    {
        var step = 1 + (seconds.Length - 2) / SampledIntervals;
        var intervals = new double[(seconds.Length - 2) / step + 1];
        for (var k = 0; k < intervals.Length; k++) intervals[k] = seconds[k * step + 1] - seconds[k * step];
        Array.Sort(intervals);
        return intervals[intervals.Length / 2];
    }

    private static (double Low, double High)? Range(ValueColumn column, string file)
    {
        if (column.Mapped?.SensorRange is not { } text) return null;
        var cut = text.IndexOf(" to ", StringComparison.Ordinal);
        if (cut < 0 || UnitText.Number(text[..cut].Trim()) is not { } low || UnitText.Number(text[(cut + 4)..].Trim()) is not { } high
            || high <= low)
            throw new LogFormatException(file, 0, column.Header.Name, $"the sensor's range is '{Excerpt.Of(text)}'",
                $"write it in the column's own unit, as in \"0 to 160\" for 0 to 160 {column.Unit.Text}.");
        return (column.Unit.Convert(low), column.Unit.Convert(high));
    }

    // A gauge or a scale rests at its lowest reading; only what is read against vacuum doesn't.
    private static int Plateau(double[] values, LogUnit unit)
    {
        if (!unit.IsPressure && unit.Canonical is not ("m" or "g" or "N")) return 0;
        double high = double.NegativeInfinity, low = double.PositiveInfinity, resolution = double.PositiveInfinity, before = double.NaN;
        foreach (var v in values)
        {
            if (double.IsNaN(v)) continue;
            (high, low) = (Math.Max(high, v), Math.Min(low, v));
            if (Math.Abs(v - before) is var step and > 0 && step < resolution) resolution = step;
            before = v;
        }

        return Math.Max(Run(values, high, resolution), unit.Canonical == "bar absolute" ? Run(values, low, resolution) : 0);
    }

    private static int Run(double[] values, double extreme, double resolution)
    {
        int run = 0, longest = 0;
        double before = double.NaN, entered = double.NaN;
        foreach (var v in values)
        {
            if (double.IsNaN(v)) continue;
            if (v == extreme)
            {
                if (run++ == 0) entered = before;
                if (run >= EqualReadings && Math.Abs(extreme - entered) >= SteepSteps * resolution) longest = Math.Max(longest, run);
            }
            else
            {
                run = 0;
            }

            before = v;
        }

        return longest;
    }
}
