using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Logs;

/// <summary>What a kitchen scale said: mass against time.</summary>
public sealed record ScaleLog
{
    private ScaleLog(LogTable table, Series time, Series mass, IReadOnlyList<Finding> findings)
    {
        File = table.File;
        Time = time;
        Mass = mass;
        Comments = table.Comments;
        Quality = table.Quality;
        Findings = findings;
    }

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>The clock, s.</summary>
    public Series Time { get; }

    /// <summary>The mass, g.</summary>
    public Series Mass { get; }

    /// <summary>Comment lines in order.</summary>
    public IReadOnlyList<string> Comments { get; }

    /// <summary>How good the rows of the file are.</summary>
    public LogQuality Quality { get; }

    /// <summary>What has to be said about the log: what was guessed, skipped and left out.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Reads the log: column 'mass', or the one that the mapping names. Rows without a reading are left out.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="mapping">What the log doesn't say of itself.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static ScaleLog Read(string path, LogMapping? mapping = null) =>
        From(LogReader.Read(path, mapping, LogRole.Wanted(LogRole.Mass)));

    /// <summary>Takes the log from a table that was read, shifted or cut before.</summary>
    /// <param name="table">The table.</param>
    /// <exception cref="LogFormatException">The column is missing or of the wrong kind.</exception>
    public static ScaleLog From(LogTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        SideColumn.RequirePart(table);
        List<Finding> findings = [.. table.Findings];
        var raw = LogRole.Mass.Require(table, findings);
        var readings = SideColumn.Readings(table, raw, "mass", findings);
        return new(table, readings.Time with { Name = "Time" }, readings.Column(raw.Name) with { Name = "Mass on the scale" }, findings);
    }

    /// <summary>For example "log.csv: 412 readings, 0 s to 41.1 s".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"{File}: {Time.Count} readings, {Digits.Round(Time[0])} s to {Digits.Round(Time[^1], 4)} s");
}
