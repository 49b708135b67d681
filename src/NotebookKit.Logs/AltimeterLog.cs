using System.Globalization;
using NotebookKit.Quantities;

namespace NotebookKit.Logs;

/// <summary>What a small altimeter said in flight: absolute pressure and, if there, temperature, on one clock.</summary>
public sealed record AltimeterLog
{
    private AltimeterLog(string file, Series time, Series pressure, Series? temperature, IReadOnlyList<string> comments)
    {
        File = file;
        Time = time;
        Pressure = pressure;
        Temperature = temperature;
        Comments = comments;
    }

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>The clock, s.</summary>
    public Series Time { get; }

    /// <summary>Static pressure, bar absolute.</summary>
    public Series Pressure { get; }

    /// <summary>Temperature of the sensor, °C; none where it wasn't logged.</summary>
    public Series? Temperature { get; }

    /// <summary>Comment lines in order.</summary>
    public IReadOnlyList<string> Comments { get; }

    /// <summary>Reads an altimeter log: column 'pressure' in an absolute unit, and if there 'temperature'. Rows without a pressure are left
    /// out.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static AltimeterLog Read(string path) => From(LogReader.Read(path));

    /// <summary>Takes an altimeter log from a table that was read, shifted or cut before.</summary>
    /// <param name="table">The table.</param>
    /// <exception cref="LogFormatException">A column is missing or of the wrong kind.</exception>
    public static AltimeterLog From(LogTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var raw = table.Column("pressure");
        if (raw.Unit != "bar absolute")
            throw new LogFormatException(table.File, 0, raw.Name, $"the unit is {raw.Unit}",
                "an altimeter reads absolute pressure: Pa, hPa, mbar ... with 'absolute'.");
        var readings = table.WithReadings("pressure");
        return new(table.File, readings.Time with { Name = "Time" }, readings.Column("pressure") with { Name = "Static pressure" },
            table.Has("temperature")
                ? table.Drawn("temperature").WithReadings("pressure").Column("temperature") with { Name = "Temperature" }
                : null,
            table.Comments);
    }

    /// <summary>For example "flight.csv: 412 readings, 0 s to 41.1 s".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"{File}: {Time.Count} readings, {Digits.Round(Time[0])} s to {Digits.Round(Time[^1])} s");
}
