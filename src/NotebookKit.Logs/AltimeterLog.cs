using System.Globalization;
using NotebookKit.Evidence;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Logs;

/// <summary>What a small altimeter said in flight: absolute pressure or height and, if there, temperature, on one clock.</summary>
/// <remarks>
/// Where the log is of heights, the pressure is the one that the standard atmosphere has at them, which is how an altimeter made the
/// heights; a finding says so.
/// </remarks>
public sealed record AltimeterLog
{
    private const double LowestMetres = -1000, HighestMetres = 11_000, LowestBar = 0.2, HighestBar = 1.2;

    private AltimeterLog(LogTable table, Series time, Series pressure, Series? height, Series? temperature, IReadOnlyList<Finding> findings)
    {
        File = table.File;
        Time = time;
        Pressure = pressure;
        Height = height;
        Temperature = temperature;
        Comments = table.Comments;
        Quality = table.Quality;
        Findings = findings;
    }

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>The clock, s.</summary>
    public Series Time { get; }

    /// <summary>Static pressure, bar absolute.</summary>
    public Series Pressure { get; }

    /// <summary>Height as it was logged, m; none where pressure was logged.</summary>
    public Series? Height { get; }

    /// <summary>Temperature of the sensor, °C; none where it wasn't logged.</summary>
    public Series? Temperature { get; }

    /// <summary>Comment lines in order.</summary>
    public IReadOnlyList<string> Comments { get; }

    /// <summary>How good the rows of the file are.</summary>
    public LogQuality Quality { get; }

    /// <summary>What has to be said about the log: what was guessed, skipped, drawn and left out.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Reads an altimeter log: column 'pressure' in an absolute unit or 'height', and if there 'temperature', or those that the
    /// mapping names. Rows without a reading are left out.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="mapping">What the log doesn't say of itself.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static AltimeterLog Read(string path, LogMapping? mapping = null) =>
        From(LogReader.Read(path, mapping, u => u.IsPressure || u.Kind is "length" or "temperature"));

    /// <summary>Takes an altimeter log from a table that was read, shifted or cut before.</summary>
    /// <param name="table">The table.</param>
    /// <exception cref="LogFormatException">A column is missing or of the wrong kind.</exception>
    public static AltimeterLog From(LogTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        List<Finding> findings = [.. table.Findings];
        return IsOfHeight(table) ? OfHeight(table, findings) : OfPressure(table, findings);
    }

    /// <summary>For example "flight.csv: 412 readings, 0 s to 41.1 s".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"{File}: {Time.Count} readings, {Digits.Round(Time[0])} s to {Digits.Round(Time[^1])} s");

    // A pressure is what the sensor reads; heights are used where there is no pressure, or where the mapping names them alone.
    private static bool IsOfHeight(LogTable table) => table.Roles.ContainsKey("height") ? !table.Roles.ContainsKey("pressure")
        : !table.Roles.ContainsKey("pressure") && !table.Has("pressure")
            && table.Columns.All(c => !LogRole.GaugePressure.Units.Contains(c.Unit))
            && table.Columns.Any(c => c.Unit == "m");

    private static AltimeterLog OfPressure(LogTable table, List<Finding> findings)
    {
        var raw = LogRole.StaticPressure.Require(table, findings);
        var readings = SideColumn.Readings(table, raw, "pressure", findings);
        var pressure = readings.Column(raw.Name) with { Name = "Static pressure", Unit = "bar absolute" };
        if (raw.Unit == LogUnit.Unreferenced)
        {
            if (pressure.Values.Any(p => p is < LowestBar or > HighestBar)) throw new LogFormatException(table.File, 0, raw.Name,
                $"the unit doesn't say what the pressure is read against, and {Digits.Round(pressure.Values.Min())} to "
                + $"{Digits.Round(pressure.Values.Max())} bar isn't what an altimeter reads",
                $"an altimeter reads {LowestBar} to {HighestBar} bar absolute; check the unit, and write 'absolute' behind it.");
            findings.Add(Finding.Note($"Column '{Excerpt.Of(raw.Name)}' doesn't say what its pressure is read against; an altimeter's "
                + "was taken as absolute."));
        }

        return new(table, readings.Time with { Name = "Time" }, pressure, null,
            SideColumn.Of(LogRole.Temperature, table, raw.Name, "Temperature", findings), findings);
    }

    private static AltimeterLog OfHeight(LogTable table, List<Finding> findings)
    {
        var raw = LogRole.Height.Require(table, findings);
        var readings = SideColumn.Readings(table, raw, "height", findings);
        var metres = readings.Column(raw.Name).Values;
        foreach (var outside in metres.Where(h => h is < LowestMetres or > HighestMetres).Take(1))
            throw new LogFormatException(table.File, 0, raw.Name, $"a height is {Digits.Round(outside)} m",
                $"a height is {LowestMetres} m to {HighestMetres} m; check the unit, and cut out what the sensor read when it was "
                    + $"knocked.");
        var datum = table.Mapping.HeightAbove ?? Datum(raw.Name, metres, findings);
        findings.Add(Finding.Note("The log holds heights. The pressure is computed from them by the standard atmosphere of 15 °C, as an "
            + "altimeter does; a fit corrects the heights for the temperature of the day."));
        return new(table, readings.Time with { Name = "Time" },
            new("Static pressure", "bar absolute",
                [.. metres.Select(h => StandardConstants.SeaLevelPressurePa / 1e5 * PressureHeight.Ratio(h,
                    StandardConstants.SeaLevelTemperatureK))]),
            new(datum == HeightDatum.Pad ? "Height above pad" : "Height above sea level", "m", metres),
            SideColumn.Of(LogRole.Temperature, table, raw.Name, "Temperature", findings), findings);
    }

    private static HeightDatum Datum(string name, IReadOnlyList<double> metres, List<Finding> findings)
    {
        const double nearPadMetres = 5;
        string[] sea = ["MSL", "SEA"], pad = ["AGL", "PAD", "GROUND"];
        bool Says(string[] words) => words.Any(w => name.Contains(w, StringComparison.OrdinalIgnoreCase));
        var first = Math.Clamp(metres.Count / 20, 1, 20);
        var atStart = metres.Take(first).Order().ElementAt(first / 2);
        var datum = Says(sea) || (!Says(pad) && Math.Abs(atStart) >= nearPadMetres) ? HeightDatum.SeaLevel : HeightDatum.Pad;
        findings.Add(Finding.Note($"Heights were taken as above {(datum == HeightDatum.Pad ? "the pad" : "sea level")}, from the "
            + "column's name or its first readings; where they are not, give \"heightAbove\": \"pad\" or \"sea level\" in the file of the "
            + "log's name with .columns.json behind it, beside the log."));
        return datum;
    }
}
