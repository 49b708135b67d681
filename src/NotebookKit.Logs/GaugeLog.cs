using System.Globalization;
using NotebookKit.Proofing.Plans;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Logs;

/// <summary>What a gauge and a thermometer said while a vessel was proved or filled: plain columns on one clock, gaps gone.</summary>
/// <remarks>
/// Rows without a pressure are left out; gaps in temperature and expansion are drawn straight, at the ends kept level for no longer than
/// the readings lie apart; both is said in the findings.
/// </remarks>
public sealed record GaugeLog
{
    // A gauge's psi read as bar is 14.5 times too much; no rig is meant to go to twice its plan. Common practice, no source.
    private const double MostOverPlan = 2;

    private static readonly string[] OfWater = ["WATER", "WASSER", "EAU", "AGUA", "VOL", "BURETTE", "EXPAN", "ML"];

    private readonly DateTime? _started;
    private readonly List<string> _skipped;

    private GaugeLog(LogTable table, Series time, Series pressure, Series? temperature, Series? expansion,
        IReadOnlyList<Finding> findings)
    {
        File = table.File;
        Time = time;
        Pressure = pressure;
        Temperature = temperature;
        Expansion = expansion;
        Comments = table.Comments;
        Quality = table.Quality;
        Findings = findings;
        _started = table.Start;
        // A column that is named after the water goes before the others.
        _skipped = [.. table.Skipped.Select(s => s.Name).OrderBy(n => IsOfWater(n) ? 0 : 1)];
    }

    private static bool IsOfWater(string name) => OfWater.Any(w => name.Contains(w, StringComparison.OrdinalIgnoreCase));

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>The clock, s.</summary>
    public Series Time { get; }

    /// <summary>Pressure, bar gauge.</summary>
    public Series Pressure { get; }

    /// <summary>Temperature, °C; none where it wasn't logged.</summary>
    public Series? Temperature { get; }

    /// <summary>Water that went in, mL; none where it wasn't logged.</summary>
    public Series? Expansion { get; }

    /// <summary>Comment lines in order.</summary>
    public IReadOnlyList<string> Comments { get; }

    /// <summary>Name of the vessel, from a comment line "vessel: Curlew"; none where there is no such line.</summary>
    public string? Vessel => LogIdentity.Find(Comments, "vessel");

    /// <summary>Serial of the vessel, from a comment line "serial: C-1"; none where there is no such line.</summary>
    public string? Serial => LogIdentity.Find(Comments, "serial");

    /// <summary>Day of the log, from a comment line "day: 2026-03-14" or else from its stamps; none where neither says it.</summary>
    /// <exception cref="LogFormatException">The line holds no day of that form.</exception>
    public DateOnly? Day => LogIdentity.FindDay(File, Comments)
        ?? (_started is { } start ? DateOnly.FromDateTime(start) : null);

    /// <summary>What has to be said about the log: what was guessed, skipped, drawn and left out.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>How good the rows of the file are.</summary>
    public LogQuality Quality { get; }

    /// <summary>Reads a gauge log: columns 'pressure', and if there 'temperature' and 'expansion', or those that the mapping
    /// names.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="ambient">Surrounding air pressure; needed only where the log is of absolute pressure.</param>
    /// <param name="mapping">What the log doesn't say of itself.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static GaugeLog Read(string path, AbsolutePressure? ambient = null, LogMapping? mapping = null) =>
        From(LogReader.Read(path, mapping, LogRole.Wanted(LogRole.GaugePressure, LogRole.Temperature, LogRole.Expansion)), ambient);

    /// <summary>Takes a gauge log from a table that was read, shifted or cut before.</summary>
    /// <param name="table">The table.</param>
    /// <param name="ambient">Surrounding air pressure; needed only where the log is of absolute pressure.</param>
    /// <exception cref="LogFormatException">A column is missing or of the wrong kind, or the clock was reset and nobody says which part is
    /// meant.</exception>
    public static GaugeLog From(LogTable table, AbsolutePressure? ambient = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        SideColumn.RequirePart(table);
        List<Finding> findings = [.. table.Findings];
        var raw = LogRole.GaugePressure.Require(table, findings);
        var offset = raw.Unit switch
        {
            "bar gauge" => 0,
            "bar absolute" when (ambient ?? table.Mapping.Ambient) is { } surrounding => surrounding.Bar,
            "bar absolute" => throw new LogFormatException(table.File, 0, raw.Name, "the log is of absolute pressure",
                "to read it as gauge pressure takes the air's of that day: "
                    + $"{MappingFile.Write(table.File, "\"ambient\": \"1.013 bar absolute\"")}."),
            _ => throw new LogFormatException(table.File, 0, raw.Name, "the unit is a pressure that doesn't say what it is read against",
                "write 'gauge' or 'absolute' behind the unit in the header, or "
                    + $"{MappingFile.Write(table.File, MappingFile.Member("pressure", raw.Name, "psi gauge"))}."),
        };
        var readings = SideColumn.Readings(table, raw, "pressure", findings);
        return new GaugeLog(
            table,
            readings.Time with { Name = "Time" },
            new Series("Pressure", "bar gauge", [.. readings.Column(raw.Name).Values.Select(p => p - offset)]),
            SideColumn.Of(LogRole.Temperature, table, raw.Name, "Temperature", findings),
            SideColumn.Of(LogRole.Expansion, table, raw.Name, "Water pumped in", findings),
            findings);
    }

    /// <summary>The log as readings of a planned proof, with the vessel, serial and day that it gives.</summary>
    /// <param name="proof">The proof that was planned.</param>
    /// <exception cref="LogFormatException">The log gives a day that is no day.</exception>
    public ProofReadings ToReadings(Proof proof) =>
        new() { Proof = proof, Vessel = Vessel, Serial = Serial, Day = Day, Time = Time, Pressure = Pressure, Temperature = Temperature,
            Expansion = Expansion, OfLog = Expansion is null && _skipped.Count > 0 ? [.. Findings, WaterMayBeSkipped()] : Findings };

    private Finding WaterMayBeSkipped() => Finding.Warning($"No column was taken for the water pumped in, and {Excerpt.Names(_skipped)} "
        + $"{(_skipped.Count == 1 ? "was" : "were")} skipped. Where that is the water, "
        + $"{MappingFile.Write(File, MappingFile.Member("water", _skipped[0], "mL"))}, with its own unit, and judge the log again.");

    /// <summary>What to say where the readings lie so far above a planned proof that their unit is wrong; none where they don't.</summary>
    internal string? FarAbove(GaugePressure planned)
    {
        var highest = Pressure.Values.Max().BarGauge();
        return highest.Pascals <= MostOverPlan * planned.Pascals ? null : $"the highest reading is {highest}, "
            + $"{Digits.Round(highest.Pascals / planned.Pascals)} times the planned proof of {planned}; is the column in psi? Correct the "
            + "unit and judge the log again: nothing is written.";
    }

    /// <summary>For example "proof.csv: 1204 readings, 0 s to 1203 s, up to 60.2 bar gauge".</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{File}: {Time.Count} readings, {Digits.Round(Time[0])} s to "
            + $"{Digits.Round(Time[^1], 4)} s, up to {Digits.Round(Pressure.Values.Max())} bar gauge");
}
