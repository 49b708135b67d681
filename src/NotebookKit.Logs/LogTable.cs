using System.Globalization;
using Deedle;
using NotebookKit.Provenance;
using UnitsNet;
using ColumnOfNumbers = NotebookKit.Quantities.Series;

namespace NotebookKit.Logs;

/// <summary>
/// A log as it was read: one clock, several columns, each in one unit. Where a cell was empty the column holds not-a-number, and only
/// there.
/// </summary>
public sealed record LogTable
{
    private const double NoReach = -1;
    private const double MostRows = 1e7;

    /// <exception cref="LogFormatException">The clock doesn't rise from row to row.</exception>
    internal LogTable(string file, IReadOnlyList<string> comments, ColumnOfNumbers time, IReadOnlyList<ColumnOfNumbers> columns)
    {
        File = file;
        Comments = comments;
        Time = time with { Values = Rising(file, time.Name, time.Values) };
        Columns = columns;
    }

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>Comment lines in order, without their mark.</summary>
    public IReadOnlyList<string> Comments { get; }

    /// <summary>The clock, rising, in seconds.</summary>
    public ColumnOfNumbers Time { get; private init; }

    /// <summary>The other columns in order; time s, pressure bar gauge or bar absolute, temperature °C, volume mL, length m, mass g, force
    /// N.</summary>
    public IReadOnlyList<ColumnOfNumbers> Columns { get; private init; }

    /// <summary>How good the rows of the file are.</summary>
    public required LogQuality Quality { get; init; }

    /// <summary>What has to be said about the log: what was guessed, skipped and left out.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>When its first row was logged, by the log's own clock; none where the log doesn't say the day.</summary>
    public DateTime? Start { get; internal init; }

    /// <summary>By how much the log's clock is before universal time; none where neither log nor mapping says.</summary>
    public Duration? UtcOffset { get; internal init; }

    /// <summary>What was given of the log.</summary>
    internal LogMapping Mapping { get; init; } = new();

    /// <summary>Names of columns by what the mapping says they are.</summary>
    internal IReadOnlyDictionary<string, string> Roles { get; init; } = new Dictionary<string, string>();

    /// <summary>Columns that were left out.</summary>
    internal IReadOnlyList<SkippedColumn> Skipped { get; init; } = [];

    /// <summary>Whether it is known which stretch of the log is meant.</summary>
    internal bool StartedPart { get; init; } = true;

    /// <summary>How many rows there are.</summary>
    public int Count => Time.Count;

    /// <summary>Whether there is a column of that name.</summary>
    /// <param name="name">Name as the header says it; capitals don't matter.</param>
    public bool Has(string name) => Columns.Any(c => Same(c, name));

    /// <summary>A column by name.</summary>
    /// <param name="name">Name as the header says it; capitals don't matter.</param>
    /// <exception cref="LogFormatException">There is no such column.</exception>
    public ColumnOfNumbers Column(string name) =>
        Columns.FirstOrDefault(c => Same(c, name))
        ?? throw new LogFormatException(File, 0, name, $"there is no such column; the columns are "
            + $"{Excerpt.Names(Columns.Select(c => c.Name))}",
            "add it to the header or ask for one of these.");

    /// <summary>The same log with its clock moved.</summary>
    /// <param name="offset">Added to every time; any sign.</param>
    /// <exception cref="LogFormatException">Times that far off can't be told apart any more.</exception>
    public LogTable ShiftClock(Duration offset)
    {
        double[] shifted = [.. Time.Values.Select(t => t + offset.Seconds)];
        return this with { Time = Time with { Values = Rising(File, Time.Name, shifted) } };
    }

    /// <summary>The same log between two times.</summary>
    /// <param name="from">First time kept.</param>
    /// <param name="to">Last time kept; after <paramref name="from"/>.</param>
    /// <exception cref="LogFormatException">No row lies between them.</exception>
    public LogTable Between(Duration from, Duration to)
    {
        int[] rows = [.. Enumerable.Range(0, Count).Where(i => Time[i] >= from.Seconds && Time[i] <= to.Seconds)];
        return rows.Length > 0 ? Rows(rows)
            : throw new LogFormatException(File, 0, "time", string.Create(CultureInfo.InvariantCulture,
                $"no row lies between {from.Seconds} s and {to.Seconds} s"),
                string.Create(CultureInfo.InvariantCulture, $"the log runs from {Time[0]} s to {Time[^1]} s."));
    }

    /// <summary>A column with its empty cells drawn straight from neighbour to neighbour; empty ends stay empty.</summary>
    /// <param name="name">Name as the header says it; capitals don't matter.</param>
    /// <exception cref="LogFormatException">There is no such column, or nothing in it.</exception>
    public ColumnOfNumbers Filled(string name) => Drawn(name).Column(name);

    /// <summary>This log with a column of another one beside it, read off at this log's times; empty where the other log doesn't
    /// reach.</summary>
    /// <param name="other">Log on its own clock, already shifted onto this one's.</param>
    /// <param name="name">Name of the other's column.</param>
    /// <exception cref="LogFormatException">There is no such column, nothing in it, or it stands here already.</exception>
    public LogTable With(LogTable other, string name)
    {
        ArgumentNullException.ThrowIfNull(other);
        var column = other.Column(name);
        var beside = column with { Name = $"{column.Name} ({System.IO.Path.GetFileName(other.File)})" };
        if (Has(beside.Name)) throw new LogFormatException(File, 0, beside.Name, "the name stands twice",
            "put the column beside the log as it was read, where the column doesn't stand yet.");
        var (times, values) = other.Known(column);
        return this with { Columns = [.. Columns, beside with { Values = Resampling.Straight(Time.Values, times, values, NoReach) }] };
    }

    /// <summary>The same log at even times, every column drawn straight from reading to reading; empty inside a longer gap.</summary>
    /// <param name="step">Time between rows; above 0, and such that there are at most 10 million rows.</param>
    /// <param name="longestGap">Longest time between two readings that is drawn over; at least <paramref name="step"/>.</param>
    /// <exception cref="OutOfRangeException">The step or the gap is outside its range.</exception>
    public LogTable Every(Duration step, Duration longestGap)
    {
        var length = Time[^1] - Time[0];
        new ValidRange<Duration>(Duration.FromSeconds(Math.Max(length / MostRows, 1e-6)), Duration.FromSeconds(Math.Max(length, 1e-6)))
            .Check(step, "step of the log", $"The log lasts {Quantities.Digits.Round(length)} s.");
        new ValidRange<Duration>(step, Duration.FromDays(365)).Check(longestGap, "longest gap", "A gap is longer than a step.");
        var rows = 1 + (int)Math.Floor(length / step.Seconds + 1e-9);
        double[] times = [.. Enumerable.Range(0, rows).Select(i => Time[0] + i * step.Seconds)];
        return this with
        {
            Time = Time with { Values = times },
            Columns = [.. Columns.Select(c => c.Values.All(double.IsNaN) ? c with { Values = [.. times.Select(_ => double.NaN)] }
                : Known(c) is var (at, values) ? c with { Values = Resampling.Straight(times, at, values, 0, longestGap.Seconds) } : c)],
        };
    }

    /// <summary>The log as a data frame, a row for each time and a missing value for each empty cell.</summary>
    public Frame<double, string> ToFrame()
    {
        var frame = Frame.FromRowKeys(Time.Values);
        foreach (var column in Columns) frame.AddColumn(column.Name, column.Values);
        return frame;
    }

    /// <summary>For example "proof.csv: 1204 rows; pressure [bar gauge], temperature [°C]".</summary>
    public override string ToString() => $"{File}: {Count} rows; "
        + string.Join(", ", Columns.Take(12).Select(c => $"{c.Name} [{c.Unit}]"))
        + (Columns.Count > 12 ? $" and {Columns.Count - 12} more" : "");

    /// <summary>The rows that have a reading in a column; at least 2.</summary>
    internal LogTable WithReadings(string name)
    {
        var column = Column(name);
        int[] rows = [.. Enumerable.Range(0, Count).Where(i => !double.IsNaN(column[i]))];
        return rows.Length < 2
            ? throw new LogFormatException(File, 0, column.Name, $"there are {rows.Length} readings", "a log needs at least 2.")
            : rows.Length == Count ? this : Rows(rows);
    }

    /// <summary>The same log with the empty cells of a column drawn straight; held level at the ends, where asked, for no longer than
    /// the readings lie apart.</summary>
    internal LogTable Drawn(string name, bool holdsEnds = false)
    {
        var column = Column(name);
        var (times, values) = Known(column);
        if (times.Length == Count) return this;
        var reach = NoReach;
        for (var i = 1; holdsEnds && i < times.Length; i++) reach = Math.Max(reach, times[i] - times[i - 1]);
        var drawn = column with { Values = Resampling.Straight(Time.Values, times, values, reach) };
        return this with { Columns = [.. Columns.Select(c => ReferenceEquals(c, column) ? drawn : c)] };
    }

    private static bool Same(ColumnOfNumbers column, string name) => string.Equals(column.Name, name, StringComparison.OrdinalIgnoreCase);

    private static IReadOnlyList<double> Rising(string file, string clock, IReadOnlyList<double> times)
    {
        for (var i = 0; i < times.Count; i++)
        {
            if (double.IsFinite(times[i]) && (i == 0 || times[i] > times[i - 1])) continue;
            throw new LogFormatException(file, 0, clock, string.Create(CultureInfo.InvariantCulture,
                $"the time {times[i]} s of row {i + 1} isn't after the row before"),
                "times must be finite and rise from row to row; check the clock and by how much it is moved.");
        }

        return times;
    }

    private LogTable Rows(int[] rows)
    {
        double[] Of(IReadOnlyList<double> values) => [.. rows.Select(i => values[i])];
        return this with
        {
            Time = Time with { Values = Of(Time.Values) },
            Columns = [.. Columns.Select(c => c with { Values = Of(c.Values) })],
        };
    }

    private (double[] Times, double[] Values) Known(ColumnOfNumbers column)
    {
        int[] rows = [.. Enumerable.Range(0, Count).Where(i => !double.IsNaN(column[i]))];
        return rows.Length > 0 ? ([.. rows.Select(i => Time[i])], [.. rows.Select(i => column[i])])
            : throw new LogFormatException(File, 0, column.Name, "every cell is empty", "a column that is used needs at least one number.");
    }
}
