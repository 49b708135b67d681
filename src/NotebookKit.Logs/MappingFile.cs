using System.Text.Json;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>
/// The small file beside a log: <c>{ "time": "Timestamp", "pressure": { "column": "P1", "unit": "psi gauge" }, "part": 1 }</c>.
/// </summary>
internal static class MappingFile
{
    private const int LargestBytes = 100_000;

    private static readonly string[] Keys = ["time", "day", "pressure", "temperature", "expansion", "water", "height", "mass", "force",
        "separator",
        "decimalComma", "dayFirst", "utcOffset", "part", "heightAbove", "ambient", "about"];

    private static readonly JsonSerializerOptions Plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder
        .UnsafeRelaxedJsonEscaping };

    private static readonly string[] ColumnKeys = ["column", "unit", "sensorRange"];

    /// <summary>Name of the file beside a log.</summary>
    public static string Beside(string path) => path + ".columns.json";

    /// <summary>What to write beside a log, as it stands in the file: <c>write { "part": 1 } into the file fill.csv.columns.json beside the
    /// log</c>.</summary>
    /// <param name="log">The log; empty where it isn't at hand.</param>
    /// <param name="member">The member, as JSON.</param>
    public static string Write(string log, string member) => $"write {{ {member} }} into the file "
        + $"{(log.Length == 0 ? "of the log's name with .columns.json behind it," : Excerpt.Of(Beside(Path.GetFileName(log))))} "
        + "beside the log";

    /// <summary>What a role is called in that file: the water pumped in is "water" there, or "expansion".</summary>
    public static string KeyOf(LogRole role) => role == LogRole.Expansion ? "water" : role.Name;

    /// <summary>A column with its unit, as a member of that file.</summary>
    public static string Member(string key, string column, string? unit = null) => unit is null ? $"\"{key}\": {Quoted(column)}"
        : $"\"{key}\": {{ \"column\": {Quoted(column)}, \"unit\": {Quoted(unit)} }}";

    private static string Quoted(string text) => JsonSerializer.Serialize(Excerpt.Of(text), Plain);

    /// <summary>The mapping beside a log; none where there is no such file.</summary>
    public static LogMapping? Read(string path)
    {
        var file = Beside(path);
        if (!File.Exists(file)) return null;
        try
        {
            if (new FileInfo(file).Length > LargestBytes) throw Wrong(file, "", "the file is larger than 100 kB",
                "it holds the names of a few columns; is this the right file?");
            using var document = JsonDocument.Parse(File.ReadAllBytes(file).AsMemory().Span.StartsWith("\uFEFF"u8)
                ? File.ReadAllBytes(file).AsMemory(3) : File.ReadAllBytes(file), new() { CommentHandling = JsonCommentHandling.Skip,
                AllowTrailingCommas = true });
            return From(document.RootElement, file);
        }
        catch (JsonException e)
        {
            throw new LogFormatException(file, (int)(e.LineNumber ?? -1) + 1, "", "it isn't JSON that can be read",
                "write it as { \"time\": \"Timestamp\", \"pressure\": { \"column\": \"P1\", \"unit\": \"psi gauge\" } }.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Wrong(file, "", $"it can't be read ({e.Message})", "make the file readable, or remove it.");
        }
    }

    private static LogMapping From(JsonElement root, string file)
    {
        if (root.ValueKind != JsonValueKind.Object) throw Wrong(file, "", "the file holds no object",
            "write it as { \"time\": \"Timestamp\", \"pressure\": \"P1 (psi)\" }.");
        foreach (var entry in root.EnumerateObject()) Known(entry.Name, Keys, file);
        LogColumn? Column(string key) => root.TryGetProperty(key, out var value) ? ColumnOf(value, key, file) : null;
        bool? YesNo(string key) => !root.TryGetProperty(key, out var value) ? null : value.ValueKind switch
        {
            JsonValueKind.True => true,
            JsonValueKind.False => false,
            _ => throw Wrong(file, key, "the value is neither true nor false", "write true or false."),
        };

        return new()
        {
            Time = Column("time"), Day = Column("day"), Pressure = Column("pressure"), Temperature = Column("temperature"),
            Expansion = Column("expansion") is { } expansion ? Column("water") is null ? expansion
                : throw Wrong(file, "water", "water and expansion are two names for one column", "keep one of both.") : Column("water"),
            Height = Column("height"), Mass = Column("mass"), Force = Column("force"),
            Separator = root.TryGetProperty("separator", out var separator) ? Text(separator, "separator", file) : null,
            DecimalComma = YesNo("decimalComma"),
            DayFirst = YesNo("dayFirst"),
            UtcOffset = root.TryGetProperty("utcOffset", out var offset) ? Offset(Text(offset, "utcOffset", file), file) : null,
            Part = !root.TryGetProperty("part", out var part) ? null
                : part.ValueKind == JsonValueKind.Number && part.TryGetInt32(out var number) ? number
                : throw Wrong(file, "part", "the value is no whole number", "write 1 for the first stretch of the log."),
            HeightAbove = !root.TryGetProperty("heightAbove", out var datum) ? null : Text(datum, "heightAbove", file) switch
            {
                "pad" => HeightDatum.Pad,
                "sea level" => HeightDatum.SeaLevel,
                var other => throw Wrong(file, "heightAbove", $"'{Excerpt.Of(other)}' is no datum", "write \"pad\" or \"sea level\"."),
            },
            Ambient = root.TryGetProperty("ambient", out var air) ? Air(Text(air, "ambient", file), file) : null,
        };
    }

    // As a design writes it, with its word.
    private static AbsolutePressure Air(string text, string file)
    {
        return UnitKind.Of<AbsolutePressure>().Read(text) is AbsolutePressure { Pascals: >= 30_000 and <= 120_000 } read ? read
            : throw Wrong(file, "ambient", $"'{Excerpt.Of(text)}' is no pressure of the air around",
                "write 0.3 to 1.2 bar absolute, for example \"1.013 bar absolute\".");
    }

    private static LogColumn ColumnOf(JsonElement value, string key, string file)
    {
        if (value.ValueKind != JsonValueKind.Object) return new(Text(value, key, file));
        foreach (var entry in value.EnumerateObject()) Known(entry.Name, ColumnKeys, file);
        string? Part(string name) => value.TryGetProperty(name, out var found) ? Text(found, key, file) : null;
        return new(Part("column") ?? throw Wrong(file, key, "the column isn't named", "write \"column\": and its name in the log's "
            + "header."),
            Part("unit")) { SensorRange = Part("sensorRange") };
    }

    private static string Text(JsonElement value, string key, string file) =>
        value.ValueKind == JsonValueKind.String && value.GetString() is { Length: > 0 } text ? text
            : throw Wrong(file, key, "the value is no text", "write the value in quotation marks.");

    private static Duration Offset(string text, string file) =>
        ClockText.Zone(text, out var minutes) ? Duration.FromMinutes(minutes)
            : throw Wrong(file, "utcOffset", $"'{Excerpt.Of(text)}' is no offset", "write it as \"+02:00\", or \"Z\" for universal time.");

    private static void Known(string key, string[] known, string file)
    {
        if (known.Contains(key)) return;
        var nearest = key.Length > 40 ? known[0] : known.MinBy(k => EditDistance.Between(k, key))!;
        throw Wrong(file, key, "the entry is unknown", $"did you mean '{nearest}'? Allowed are {string.Join(", ", known)}.");
    }

    private static LogFormatException Wrong(string file, string key, string found, string allowed) => new(file, 0, key, found, allowed);
}
