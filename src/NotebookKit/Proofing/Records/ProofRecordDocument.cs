using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NotebookKit.Materials.Fluids;
using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>A proof record as text: plan and readings in SI units in one fixed order, so that the same proof has the same fingerprint
/// everywhere.</summary>
internal static class ProofRecordDocument
{
    private const string Format = "proof record 1";

    private const string Remedy = "Judge the log of the proof again and keep the record that comes of it.";

    private static readonly JsonWriterOptions Layout = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n" };

    /// <summary>SHA-256 of the record without its last two lines, in hexadecimal.</summary>
    public static string Fingerprint(ProofReadings readings) => Convert.ToHexStringLower(SHA256.HashData(Bytes(readings, null, null)));

    /// <summary>The record with verdict and fingerprint.</summary>
    public static string Write(ProofRecord record) => Encoding.UTF8.GetString(Bytes(record.Readings,
        record.Verdict.ToString().ToLowerInvariant(), record.Fingerprint)) + "\n";

    /// <summary>Reads a record, judges its readings anew and holds the answer against what the file says of itself.</summary>
    public static ProofRecord Read(string text, string name)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            if (Text(root, "format") is var format && format != Format)
                throw new FormatException($"{name} is a \"{format}\", wanted is a \"{Format}\". {Remedy}");
            var record = Readings(root).Judge();
            if (Text(root, "fingerprint") != record.Fingerprint)
                throw new FormatException($"{name} was edited: its fingerprint isn't that of its readings. {Remedy}");
            if (Text(root, "verdict") is var verdict && !string.Equals(verdict, record.Verdict.ToString(),
                StringComparison.OrdinalIgnoreCase))
                throw new FormatException($"{name} says \"{verdict}\"; its own readings say "
                    + $"\"{record.Verdict.ToString().ToLowerInvariant()}\". {Remedy}");
            return record;
        }
        catch (JsonException error)
        {
            throw new FormatException($"{name} isn't a whole proof record: line {error.LineNumber + 1} can't be read. {Remedy}", error);
        }
        catch (Exception error) when (error is KeyNotFoundException or InvalidOperationException or OutOfRangeException
            or InvalidDesignException)
        {
            throw new FormatException($"{name} can't be judged as a proof record: {error.Message.ReplaceLineEndings(" ")} {Remedy}", error);
        }
    }

    private static byte[] Bytes(ProofReadings readings, string? verdict, string? fingerprint)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteString("vessel", readings.Vessel ?? readings.Proof.Vessel);
            if (readings.Serial is { } serial) json.WriteString("serial", serial);
            if (readings.MadeAs is { } made) json.WriteString("madeAs", made);
            if (readings.Day is { } day) json.WriteString("day", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            WriteProof(json, readings.Proof);
            json.WriteNumber("gaugeErrorPa", readings.GaugeError.Pascals);
            json.WriteNumber("leakLimit", readings.LeakLimit.DecimalFractions);
            Column(json, "timeS", readings.Time);
            Column(json, "pressureBarGauge", readings.Pressure);
            Column(json, "temperatureC", readings.Temperature);
            Column(json, "expansionMl", readings.Expansion);
            ProofSightings.Write(json, readings);
            if (verdict is not null) json.WriteString("verdict", verdict);
            if (fingerprint is not null) json.WriteString("fingerprint", fingerprint);
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    private static void WriteProof(Utf8JsonWriter json, Proof proof)
    {
        json.WriteStartObject("proof");
        json.WriteString("vessel", proof.Vessel);
        json.WriteNumber("volumeM3", proof.Volume.CubicMeters);
        json.WriteNumber("workingPressurePa", proof.WorkingPressure.Pascals);
        json.WriteStartObject("rule");
        json.WriteString("name", proof.Rule.Name);
        json.WriteNumber("factor", proof.Rule.Factor);
        json.WriteNumber("permanentLimit", proof.Rule.PermanentLimit.DecimalFractions);
        WriteSource(json, proof.Rule.Source);
        json.WriteEndObject();
        json.WriteStartObject("wall");
        json.WriteNumber("growth", proof.Wall.VolumeRatio.DecimalFractions);
        json.WriteNumber("atPa", proof.Wall.At.Pascals);
        json.WriteNumber("thermalExpansionPerK", proof.Wall.ThermalExpansion.PerKelvin);
        WriteSource(json, proof.Wall.Source);
        json.WriteEndObject();
        json.WriteNumber("trappedAirM3", proof.TrappedAir.CubicMeters);
        json.WriteNumber("trappedAirLimit", proof.TrappedAirLimit.DecimalFractions);
        json.WriteNumber("waterC", proof.Water.Temperature.DegreesCelsius);
        json.WriteNumber("ambientPa", proof.Ambient.Pascals);
        json.WriteStartArray("steps");
        foreach (var step in proof.Steps) json.WriteNumberValue(step.DecimalFractions);
        json.WriteEndArray();
        json.WriteNumber("stepHoldS", proof.StepHold.Seconds);
        json.WriteNumber("proofHoldS", proof.ProofHold.Seconds);
        json.WriteNumber("leakHoldS", proof.LeakHold.Seconds);
        json.WriteEndObject();
    }

    private static void WriteSource(Utf8JsonWriter json, Source source)
    {
        json.WriteStartObject("source");
        json.WriteString("author", source.Author);
        json.WriteString("title", source.Title);
        if (source.Year is { } year) json.WriteNumber("year", year);
        json.WriteString("where", source.Where);
        json.WriteString("kind", source.Kind.ToString());
        json.WriteEndObject();
    }

    private static void Column(Utf8JsonWriter json, string name, Series? column)
    {
        if (column is null) return;
        json.WriteStartArray(name);
        foreach (var value in column.Values) json.WriteNumberValue(value);
        json.WriteEndArray();
    }

    private static ProofReadings Readings(JsonElement root)
    {
        var proof = root.GetProperty("proof");
        var (rule, wall) = (proof.GetProperty("rule"), proof.GetProperty("wall"));
        return new()
        {
            Vessel = Text(root, "vessel"),
            Serial = root.TryGetProperty("serial", out var serial) ? serial.GetString() : null,
            MadeAs = root.TryGetProperty("madeAs", out var made) ? made.GetString() : null,
            Day = root.TryGetProperty("day", out var day) ? Date(day.GetString()) : null,
            Proof = new()
            {
                Vessel = Text(proof, "vessel"),
                Volume = Volume.FromCubicMeters(Number(proof, "volumeM3")),
                WorkingPressure = GaugePressure.FromPascals(Number(proof, "workingPressurePa")),
                Rule = new(Text(rule, "name"), Number(rule, "factor"), Ratio.FromDecimalFractions(Number(rule, "permanentLimit")),
                    SourceOf(rule)),
                Wall = new(Ratio.FromDecimalFractions(Number(wall, "growth")), GaugePressure.FromPascals(Number(wall, "atPa")),
                    SourceOf(wall))
                {
                    ThermalExpansion = CoefficientOfThermalExpansion.FromPerKelvin(Number(wall, "thermalExpansionPerK")),
                },
                TrappedAir = Volume.FromCubicMeters(Number(proof, "trappedAirM3")),
                TrappedAirLimit = Ratio.FromDecimalFractions(Number(proof, "trappedAirLimit")),
                Water = new Water(Temperature.FromDegreesCelsius(Number(proof, "waterC"))),
                Ambient = AbsolutePressure.FromPascals(Number(proof, "ambientPa")),
                Steps = [.. proof.GetProperty("steps").EnumerateArray().Select(s => Ratio.FromDecimalFractions(s.GetDouble()))],
                StepHold = Number(proof, "stepHoldS").Seconds(),
                ProofHold = Number(proof, "proofHoldS").Seconds(),
                LeakHold = Number(proof, "leakHoldS").Seconds(),
            },
            GaugeError = Pressure.FromPascals(Number(root, "gaugeErrorPa")),
            LeakLimit = Ratio.FromDecimalFractions(Number(root, "leakLimit")),
            Time = Values(root, "timeS", "Time", "s")!,
            Pressure = Values(root, "pressureBarGauge", "Pressure", "bar gauge")!,
            Temperature = root.TryGetProperty("temperatureC", out _) ? Values(root, "temperatureC", "Temperature", "°C") : null,
            Expansion = root.TryGetProperty("expansionMl", out _) ? Values(root, "expansionMl", "Water pumped in", "mL") : null,
            Tape = ProofSightings.TapeOf(root),
            Drops = ProofSightings.DropsOf(root),
            Sounds = ProofSightings.SoundsOf(root),
        };
    }

    private static Series Values(JsonElement root, string key, string name, string unit) =>
        new(name, unit, [.. root.GetProperty(key).EnumerateArray().Select(v => v.GetDouble())]);

    private static Source SourceOf(JsonElement owner)
    {
        var source = owner.GetProperty("source");
        return new(
            Text(source, "author"), Text(source, "title"), source.TryGetProperty("year", out var year) ? year.GetInt32() : null,
                Text(source, "where"),
            Enum.TryParse<SourceKind>(Text(source, "kind"), out var kind) ? kind : SourceKind.Unverified);
    }

    private static DateOnly Date(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new InvalidOperationException($"its day \"{text}\" is no date of the form 2026-03-14.");

    private static string Text(JsonElement owner, string key) => owner.GetProperty(key).GetString()
        ?? throw new InvalidOperationException($"its {key} is empty.");

    private static double Number(JsonElement owner, string key) => owner.GetProperty(key).GetDouble();
}
