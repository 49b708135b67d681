using System.Globalization;
using NotebookKit.Proofing;
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
    private GaugeLog(string file, Series time, Series pressure, Series? temperature, Series? expansion, IReadOnlyList<string> comments,
        IReadOnlyList<Finding> findings)
    {
        File = file;
        Time = time;
        Pressure = pressure;
        Temperature = temperature;
        Expansion = expansion;
        Comments = comments;
        Findings = findings;
    }

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

    /// <summary>Day of the log, from a comment line "day: 2026-03-14"; none where there is no such line.</summary>
    /// <exception cref="LogFormatException">The line holds no day of that form.</exception>
    public DateOnly? Day => LogIdentity.FindDay(File, Comments);

    /// <summary>What has to be said about the log: gaps.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Reads a gauge log: columns 'pressure', and if there 'temperature' and 'expansion'.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="ambient">Surrounding air pressure; needed only where the log is of absolute pressure.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static GaugeLog Read(string path, AbsolutePressure? ambient = null) => From(LogReader.Read(path), ambient);

    /// <summary>Takes a gauge log from a table that was read, shifted or cut before.</summary>
    /// <param name="table">The table.</param>
    /// <param name="ambient">Surrounding air pressure; needed only where the log is of absolute pressure.</param>
    /// <exception cref="LogFormatException">A column is missing or of the wrong kind.</exception>
    public static GaugeLog From(LogTable table, AbsolutePressure? ambient = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        var raw = table.Column("pressure");
        var offset = raw.Unit switch
        {
            "bar gauge" => 0,
            "bar absolute" when ambient is { } surrounding => surrounding.Bar,
            "bar absolute" => throw new LogFormatException(table.File, 0, raw.Name, "the log is of absolute pressure",
                "give the ambient pressure of the day, so that it can be read as gauge pressure."),
            _ => throw new LogFormatException(table.File, 0, raw.Name, $"the unit is {raw.Unit}",
                "a pressure column is in bar, psi, kPa ... with 'gauge' or 'absolute'."),
        };
        var readings = table.WithReadings("pressure");

        List<Finding> findings = [];
        if (readings.Count < table.Count) findings.Add(Finding.Note($"{table.Count - readings.Count} of {table.Count} rows have no "
            + $"pressure and were left out; the longest gap is {LongestGap(readings.Time.Values)}."));
        return new GaugeLog(
            table.File,
            readings.Time with { Name = "Time" },
            new Series("Pressure", "bar gauge", [.. readings.Column("pressure").Values.Select(p => p - offset)]),
            Optional("temperature", "°C", "Temperature"),
            Optional("expansion", "mL", "Water pumped in"),
            table.Comments,
            findings);

        Series? Optional(string name, string unit, string title)
        {
            if (!table.Has(name)) return null;
            var column = table.Column(name);
            if (column.Unit != unit) throw new LogFormatException(table.File, 0, column.Name, $"the unit is {column.Unit}",
                $"'{name}' must be in {unit} or a unit of the same kind.");
            // A slow sensor's last reading stands for the rows after it, as its first does for those before.
            var filled = table.Drawn(name, holdsEnds: true).WithReadings("pressure").Column(name);
            var open = filled.Values.Count(double.IsNaN);
            var gaps = readings.Column(name).Values.Count(double.IsNaN) - open;
            if (gaps > 0) findings.Add(Finding.Note($"{gaps} gaps in {name} were drawn straight from neighbour to neighbour."));
            if (open > 0)
            {
                findings.Add(Finding.Warning($"{name} doesn't reach the ends of the log ({open} rows); it isn't used."));
                return null;
            }

            return filled with { Name = title };
        }
    }

    /// <summary>The log as readings of a planned proof, with the vessel, serial and day that it gives.</summary>
    /// <param name="proof">The proof that was planned.</param>
    /// <exception cref="LogFormatException">The log gives a day that is no day.</exception>
    public ProofReadings ToReadings(Proof proof) =>
        new() { Proof = proof, Vessel = Vessel, Serial = Serial, Day = Day, Time = Time, Pressure = Pressure, Temperature = Temperature,
            Expansion = Expansion };

    /// <summary>For example "proof.csv: 1204 readings, 0 s to 1203 s, up to 60.2 bar gauge".</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{File}: {Time.Count} readings, {Digits.Round(Time[0])} s to "
            + $"{Digits.Round(Time[^1], 4)} s, up to {Digits.Round(Pressure.Values.Max())} bar gauge");

    private static string LongestGap(IReadOnlyList<double> times)
    {
        var (from, to) = times.Zip(times.Skip(1)).MaxBy(p => p.Second - p.First);
        return $"{Digits.Round(to - from)} s at {Digits.Round(from, 4)} s";
    }
}
