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
    internal LogTable(string file, IReadOnlyList<string> comments, ColumnOfNumbers time, IReadOnlyList<ColumnOfNumbers> columns)
    {
        File = file;
        Comments = comments;
        Time = time;
        Columns = columns;
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
    public LogTable ShiftClock(Duration offset) =>
        new(File, Comments, Time with { Values = [.. Time.Values.Select(t => t + offset.Seconds)] }, Columns);

    /// <summary>The same log between two times.</summary>
    /// <param name="from">First time kept.</param>
    /// <param name="to">Last time kept; after <paramref name="from"/>.</param>
    /// <exception cref="LogFormatException">No row lies between them.</exception>
    public LogTable Between(Duration from, Duration to)
    {
        var rows = Enumerable.Range(0, Count).Where(i => Time[i] >= from.Seconds && Time[i] <= to.Seconds).ToArray();
        if (rows.Length == 0)
            throw new LogFormatException(File, 0, "time", string.Create(CultureInfo.InvariantCulture,
                $"no row lies between {from.Seconds} s and {to.Seconds} s"),
                string.Create(CultureInfo.InvariantCulture, $"the log runs from {Time[0]} s to {Time[^1]} s."));
        ColumnOfNumbers Pick(ColumnOfNumbers c) => c with { Values = [.. rows.Select(i => c[i])] };
        return new(File, Comments, Pick(Time), [.. Columns.Select(Pick)]);
    }

    /// <summary>A column with its empty cells drawn straight from neighbour to neighbour; empty ends stay empty.</summary>
    /// <param name="name">Name as the header says it; capitals don't matter.</param>
    /// <exception cref="LogFormatException">There is no such column, or nothing in it.</exception>
    public ColumnOfNumbers Filled(string name)
    {
        var column = Column(name);
        var known = Known(column);
        return column with { Values = [.. Time.Values.Select(t => At(known, t))] };
    }

    /// <summary>This log with a column of another one beside it, read off at this log's times; empty where the other log doesn't
    /// reach.</summary>
    /// <param name="other">Log on its own clock, already shifted onto this one's.</param>
    /// <param name="name">Name of the other's column.</param>
    /// <exception cref="LogFormatException">There is no such column, or nothing in it.</exception>
    public LogTable With(LogTable other, string name)
    {
        ArgumentNullException.ThrowIfNull(other);
        var column = other.Column(name);
        var known = other.Known(column);
        return new(File, Comments, Time, [.. Columns, column
            with { Name = $"{column.Name} ({System.IO.Path.GetFileName(other.File)})",
            Values = [.. Time.Values.Select(t => At(known, t))] }]);
    }

    /// <summary>For example "proof.csv: 1204 rows; pressure [bar gauge], temperature [°C]".</summary>
    public override string ToString() => $"{File}: {Count} rows; {string.Join(", ", Columns.Select(c => $"{c.Name} [{c.Unit}]"))}";

    private static bool Same(ColumnOfNumbers column, string name) => string.Equals(column.Name, name, StringComparison.OrdinalIgnoreCase);

    private Series<double, double> Known(ColumnOfNumbers column)
    {
        var series = new Series<double, double>([.. Time.Values], [.. column.Values]).DropMissing();
        return series.IsEmpty
            ? throw new LogFormatException(File, 0, column.Name, "every cell is empty", "a column that is used needs at least one number.")
            : series;
    }

    private static double At(Series<double, double> known, double time)
    {
        var before = known.TryGetObservation(time, Lookup.ExactOrSmaller);
        var after = known.TryGetObservation(time, Lookup.ExactOrGreater);
        if (!before.HasValue || !after.HasValue) return double.NaN;
        double t0 = before.Value.Key, t1 = after.Value.Key, v0 = before.Value.Value, v1 = after.Value.Value;
        return t1 > t0 ? v0 + (v1 - v0) * (time - t0) / (t1 - t0) : v0;
    }
}
