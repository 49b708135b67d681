using System.Globalization;
using Deedle;
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

    private readonly Frame<double, string> _frame;

    /// <exception cref="LogFormatException">The clock doesn't rise from row to row.</exception>
    internal LogTable(string file, IReadOnlyList<string> comments, ColumnOfNumbers time, IReadOnlyList<ColumnOfNumbers> columns)
        : this(file, comments, time, columns, ToFrame(file, time, columns))
    {
    }

    // Takes names and units from the columns that are given, and every number from the frame.
    private LogTable(string file, IReadOnlyList<string> comments, ColumnOfNumbers time, IEnumerable<ColumnOfNumbers> columns,
        Frame<double, string> frame)
    {
        File = file;
        Comments = comments;
        _frame = frame;
        Time = time with { Values = [.. frame.RowKeys] };
        Columns = [.. columns.Select(c => c with { Values = Cells(frame.GetColumn<double>(c.Name)) })];
    }

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>Comment lines in order, without their mark.</summary>
    public IReadOnlyList<string> Comments { get; }

    /// <summary>The clock, rising, in seconds.</summary>
    public ColumnOfNumbers Time { get; }

    /// <summary>The other columns in order; time s, pressure bar gauge or bar absolute, temperature °C, volume mL, length m, mass g, force
    /// N.</summary>
    public IReadOnlyList<ColumnOfNumbers> Columns { get; }

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
        ?? throw new LogFormatException(File, 0, name, "there is no such column; the columns are "
            + $"{string.Join(", ", Columns.Select(c => $"'{c.Name}'"))}", "add it to the header or ask for one of these.");

    /// <summary>The same log with its clock moved.</summary>
    /// <param name="offset">Added to every time; any sign.</param>
    /// <exception cref="LogFormatException">Times that far off can't be told apart any more.</exception>
    public LogTable ShiftClock(Duration offset)
    {
        double[] shifted = [.. _frame.RowKeys.Select(t => t + offset.Seconds)];
        return new(File, Comments, Time, Columns, _frame.IndexRowsWith(Rising(File, Time.Name, shifted)));
    }

    /// <summary>The same log between two times.</summary>
    /// <param name="from">First time kept.</param>
    /// <param name="to">Last time kept; after <paramref name="from"/>.</param>
    /// <exception cref="LogFormatException">No row lies between them.</exception>
    public LogTable Between(Duration from, Duration to)
    {
        if (!Time.Values.Any(t => t >= from.Seconds && t <= to.Seconds))
            throw new LogFormatException(File, 0, "time", string.Create(CultureInfo.InvariantCulture,
                $"no row lies between {from.Seconds} s and {to.Seconds} s"),
                string.Create(CultureInfo.InvariantCulture, $"the log runs from {Time[0]} s to {Time[^1]} s."));
        return new(File, Comments, Time, Columns, FrameModule.RowsBetween(from.Seconds, to.Seconds, _frame));
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
        var known = other.Known(column);
        var beside = column with { Name = $"{column.Name} ({System.IO.Path.GetFileName(other.File)})" };
        if (Has(beside.Name)) throw new LogFormatException(File, 0, beside.Name, "the name stands twice",
            "put the column beside the log as it was read, where the column doesn't stand yet.");
        return new(File, Comments, Time, Columns.Append(beside),
            _frame.Join(beside.Name, known.Interpolate(_frame.RowKeys, (t, before, after) => Straight(t, before, after, NoReach)),
                JoinKind.Left));
    }

    /// <summary>For example "proof.csv: 1204 rows; pressure [bar gauge], temperature [°C]".</summary>
    public override string ToString() => $"{File}: {Count} rows; {string.Join(", ", Columns.Select(c => $"{c.Name} [{c.Unit}]"))}";

    /// <summary>The rows that have a reading in a column; at least 2.</summary>
    internal LogTable WithReadings(string name)
    {
        var column = Column(name);
        var readings = _frame.GetColumn<double>(column.Name).ValueCount;
        return readings < 2
            ? throw new LogFormatException(File, 0, column.Name, $"there are {readings} readings", "a log needs at least 2.")
            : new(File, Comments, Time, Columns, FrameModule.DropSparseRowsBy(column.Name, _frame));
    }

    /// <summary>The same log with the empty cells of a column drawn straight; held level at the ends, where asked, for no longer than
    /// the readings lie apart.</summary>
    internal LogTable Drawn(string name, bool holdsEnds = false)
    {
        var column = Column(name);
        var known = Known(column);
        var reach = holdsEnds && known.KeyCount > 1 ? known.Keys.Zip(known.Keys.Skip(1), (a, b) => b - a).Max() : NoReach;
        var drawn = known.Interpolate(_frame.RowKeys, (t, before, after) => Straight(t, before, after, reach));
        var frame = _frame.Clone();
        frame.ReplaceColumn(column.Name, drawn);
        return new(File, Comments, Time, Columns, frame);
    }

    private static bool Same(ColumnOfNumbers column, string name) => string.Equals(column.Name, name, StringComparison.OrdinalIgnoreCase);

    private static Frame<double, string> ToFrame(string file, ColumnOfNumbers time, IReadOnlyList<ColumnOfNumbers> columns)
    {
        var frame = Frame.FromRowKeys(Rising(file, time.Name, time.Values));
        foreach (var column in columns) frame.AddColumn(column.Name, column.Values);
        return frame;
    }

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

    private Series<double, double> Known(ColumnOfNumbers column)
    {
        var series = _frame.GetColumn<double>(column.Name).DropMissing();
        return series.IsEmpty
            ? throw new LogFormatException(File, 0, column.Name, "every cell is empty", "a column that is used needs at least one number.")
            : series;
    }

    private static double[] Cells(Series<double, double> column) =>
        [.. column.GetAllValues().Select(v => v.HasValue ? v.Value : double.NaN)];

    // Deedle's own line multiplies in another order and so differs in the last digits; its own filling knows no limit in time.
    private static double Straight(double time, OptionalValue<KeyValuePair<double, double>> before,
        OptionalValue<KeyValuePair<double, double>> after, double reach)
    {
        var ((t0, v0), (t1, v1)) = (before.ValueOrDefault, after.ValueOrDefault);
        return (before.HasValue, after.HasValue) switch
        {
            (true, true) => t1 > t0 ? v0 + (v1 - v0) * (time - t0) / (t1 - t0) : v0,
            (true, false) when time - t0 <= reach => v0,
            (false, true) when t1 - time <= reach => v1,
            _ => double.NaN,
        };
    }
}
