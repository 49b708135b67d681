using NotebookKit.Provenance;
using ColumnOfNumbers = NotebookKit.Quantities.Series;

namespace NotebookKit.Logs;

/// <summary>A column beside the one that a log is of: its gaps drawn, and nothing handed on that isn't a number.</summary>
internal static class SideColumn
{
    // What a logger measures of itself says nothing of the vessel.
    private static readonly string[] OfTheLogger = ["CPU", "BOARD", "CHIP", "MCU", "IMU", "INTERNAL", "LOGGER"];

    /// <summary>The column at the rows of the log; none where there is none or it doesn't reach the ends.</summary>
    /// <param name="role">What is sought.</param>
    /// <param name="table">The log as read.</param>
    /// <param name="main">Name of the column that the log is of.</param>
    /// <param name="title">Title of what is handed on.</param>
    /// <param name="findings">Told what was guessed, drawn or left out.</param>
    public static ColumnOfNumbers? Of(LogRole role, LogTable table, string main, string title, List<Finding> findings)
    {
        if (!table.Has(role.Name) && !table.Roles.ContainsKey(role.Name))
        {
            var fitting = table.Columns.Where(c => role.Units.Contains(c.Unit)).ToList();
            if (fitting.Count == 0) return null;
            if (fitting.Count > 1 || !MayBe(role, fitting[0]))
            {
                findings.Add(Finding.Note($"{Excerpt.Names(fitting.Select(c => c.Name))} could be the {role.Name} and "
                    + $"{(fitting.Count > 1 ? "none is" : "isn't")} used. Where it is meant, {MappingFile.Write(table.File,
                        MappingFile.Member(MappingFile.KeyOf(role), fitting[0].Name))}."));
                return null;
            }
        }

        if (table.Skipped.Any(s => string.Equals(s.Name, role.Name, StringComparison.OrdinalIgnoreCase))
            || role.Find(table, findings) is not { } column) return null;
        if (column.Values.All(double.IsNaN))
        {
            findings.Add(Finding.Warning($"{role.Name} has no reading; it isn't used."));
            return null;
        }

        // A slow sensor's last reading stands for the rows after it, as its first does for those before.
        var filled = table.Drawn(column.Name, holdsEnds: true).WithReadings(main).Column(column.Name);
        var open = filled.Values.Count(double.IsNaN);
        var gaps = table.WithReadings(main).Column(column.Name).Values.Count(double.IsNaN) - open;
        if (gaps > 0) findings.Add(Finding.Note($"{gaps} gaps in {role.Name} were drawn straight from neighbour to neighbour."));
        if (open == 0) return filled with { Name = title };
        findings.Add(Finding.Warning($"{role.Name} doesn't reach the ends of the log ({open} rows); it isn't used."));
        return null;
    }

    private static bool MayBe(LogRole role, ColumnOfNumbers column) => (role.IsHinted(column) || column.Name.Length <= 2)
        && !OfTheLogger.Any(w => column.Name.Contains(w, StringComparison.OrdinalIgnoreCase));

    /// <summary>Says which rows have no reading in the column that the log is of.</summary>
    public static LogTable Readings(LogTable table, ColumnOfNumbers column, string what, List<Finding> findings)
    {
        var readings = table.WithReadings(column.Name);
        if (readings.Count == table.Count) return readings;
        var times = readings.Time;
        var longest = Enumerable.Range(0, times.Count - 1).MaxBy(i => times[i + 1] - times[i]);
        findings.Add(Finding.Note($"{table.Count - readings.Count} of {table.Count} rows have no {what} and were left out; the longest "
            + $"gap is "
            + $"{Quantities.Digits.Round(times[longest + 1] - times[longest])} s at {Quantities.Digits.Round(times[longest], 4)} s."));
        return readings;
    }

    /// <summary>Refuses a log of which nobody says what stretch is meant.</summary>
    public static void RequirePart(LogTable table)
    {
        if (!table.StartedPart) throw new LogFormatException(table.File, 0, table.Time.Name,
            $"the clock was reset {LogQuality.Count(table.Quality.Resets, "time")}; was the logger restarted?",
            $"{MappingFile.Write(table.File, "\"part\": 1")}, with the part that is meant, 1 to {table.Quality.Resets + 1}, or cut the "
                + "file in two.");
    }
}
