using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Proofing.Records;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Live.Answers;

/// <summary>The day of a flight as it is typed at the pad: the same file of the day that a club's folder has.</summary>
internal static class DayOfPage
{
    private const string Wind = "site.wind.speed", Height = "site.wind.reference", From = "site.wind.from", Air = "site.atmosphere";

    private static readonly string[] VesselKeys = ["serial", "label", "wall temperature", "resin moisture", "resin moisture by"];

    private static readonly string[] PartKeys = ["kind", "serial", "rated to"];

    private static readonly JsonWriterOptions Layout = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The file of the day that what was typed makes.</summary>
    /// <exception cref="FormatException">Something that was typed isn't a value of its kind.</exception>
    public static string Text(JsonElement typed, Design design) => Text(typed, design, "", "");

    /// <summary>The design as it is on the day, whatever is typed of day and serials: weather and water change a fill, names
    /// don't.</summary>
    /// <exception cref="DesignFileException">A change means no value of the design, or can't be that.</exception>
    public static Design Applied(JsonElement typed, Design design) =>
        FlightDay.Parse(Text(typed, design, "2000-01-01", "not typed"), "What was typed").Applied(design);

    private static string Text(JsonElement typed, Design design, string noDay, string noSerial)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Layout))
        {
            json.WriteStartObject();
            json.WriteString("day", Or(ReadingJson.Text(typed, "day"), noDay));
            Given(json, "flight", ReadingJson.Text(typed, "flight"));
            json.WriteStartArray("vessels");
            foreach (var own in ReadingJson.Items(typed, "stages"))
            {
                json.WriteStartObject();
                json.WriteString("serial", Or(ReadingJson.Text(own, "serial"), noSerial));
                foreach (var key in VesselKeys.Skip(1)) Given(json, key, ReadingJson.Text(own, key));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Given(json, "fill order", ReadingJson.Text(typed, "order"));
            json.WriteStartArray("changes");
            if (ReadingJson.Quantity<Speed>(typed, "wind", "wind") is not null) Change(json, Wind, ReadingJson.Text(typed, "wind"));
            if (ReadingJson.Quantity<Length>(typed, "height", "height of the wind meter") is not null)
                Change(json, Height, ReadingJson.Text(typed, "height"));
            if (ReadingJson.Quantity<Angle>(typed, "from", "wind direction") is not null)
                Change(json, From, ReadingJson.Text(typed, "from"));
            if (AirOf(typed, design) is { } air) Change(json, Air, air);
            foreach (var change in ReadingJson.Items(typed, "changes"))
                Change(json, ReadingJson.Text(change, "of"), ReadingJson.Text(change, "is"));
            json.WriteEndArray();
            json.WriteStartArray("gear");
            foreach (var part in ReadingJson.Items(typed, "gear"))
            {
                json.WriteStartObject();
                foreach (var key in PartKeys) Given(json, key, ReadingJson.Text(part, key));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    /// <summary>A file of the day as the fields that are typed at the pad.</summary>
    /// <exception cref="DesignFileException">It doesn't describe a day.</exception>
    public static void WriteFields(Utf8JsonWriter json, string text)
    {
        var day = FlightDay.Parse(text, "The file of the day");
        var root = TreeReader.Parse("day", Encoding.UTF8.GetBytes(text));
        string Of(string path) => TreePath.Find(root, path) is { } node ? TreeWriter.Write(node).Trim().Trim('"') : "";
        json.WriteString("day", Of("day"));
        json.WriteString("flight", day.Flight);
        json.WriteString("order", day.FillOrder);
        json.WriteString("wind", day.Changes.LastOrDefault(c => c.Name == Wind)?.Value ?? "");
        json.WriteString("height", day.Changes.LastOrDefault(c => c.Name == Height)?.Value ?? "");
        json.WriteString("from", day.Changes.LastOrDefault(c => c.Name == From)?.Value ?? "");
        Rows("gear", day.Gear.Count, PartKeys);
        json.WriteStartArray("changes");
        foreach (var change in day.Changes.Where(c => c.Name is not (Wind or Height or From))) Change(json, change.Name, change.Value);
        json.WriteEndArray();
        Rows("vessels", day.Vessels.Count, VesselKeys, "stages");

        void Rows(string path, int count, string[] keys, string? name = null)
        {
            json.WriteStartArray(name ?? path);
            for (var i = 1; i <= count; i++)
            {
                json.WriteStartObject();
                foreach (var key in keys) json.WriteString(key, Of(FormattableString.Invariant($"{path}.{i}.{key}")));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }
    }

    /// <summary>The proof records that are open.</summary>
    public static IReadOnlyList<ProofRecord> Proofs(JsonElement typed) => [.. ReadingJson.Items(typed, "stages")
        .Select(s => ReadingJson.Text(s, "proof")).Where(t => t.Length > 0).Select(t => ProofRecord.FromJson(t, "The proof record"))];

    /// <summary>The service records that are open. A record is read from a file as everywhere; the page's own files live in
    /// memory.</summary>
    public static IReadOnlyList<ServiceRecord> Services(JsonElement typed) => [.. ReadingJson.Items(typed, "stages")
        .Select(s => ReadingJson.Text(s, "service")).Where(t => t.Length > 0).Select((text, i) =>
        {
            var path = FormattableString.Invariant($"/service-{i}.jsonl");
            File.WriteAllText(path, text + (text.EndsWith('\n') ? "" : "\n"));
            return ServiceFile.Read(path);
        })];

    // What isn't read is as the design's air has it at the ground.
    private static string? AirOf(JsonElement typed, Design design)
    {
        var (air, pressure) = (ReadingJson.Quantity<Temperature>(typed, "temperature", "temperature"),
            ReadingJson.Quantity<AbsolutePressure>(typed, "pressure", "air pressure"));
        if ((air is null && pressure is null) || design.Site is not { } site) return null;
        return FormattableString.Invariant($"{{ \"kind\": \"of the day\", \"elevation\": \"{site.Elevation.Meters:0.###} m\", ")
            + FormattableString.Invariant($"\"temperature\": \"{(air ?? site.Temperature).DegreesCelsius:0.###} °C\", ")
            + FormattableString.Invariant($"\"pressure\": \"{(pressure ?? site.Pressure).Bar:0.######} bar absolute\" }}");
    }

    private static string Or(string typed, string nothing) => typed.Length > 0 ? typed : nothing;

    private static void Given(Utf8JsonWriter json, string name, string value)
    {
        if (value.Length > 0) json.WriteString(name, value);
    }

    private static void Change(Utf8JsonWriter json, string of, string value)
    {
        json.WriteStartObject();
        json.WriteString("of", of);
        json.WriteString("is", value);
        json.WriteEndObject();
    }
}
