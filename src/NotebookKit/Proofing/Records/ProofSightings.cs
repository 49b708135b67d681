using System.Text.Json;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>Tape, drops and sounds of a proof record as text, in SI; nothing is written where nothing was read, so that a record without
/// them keeps its fingerprint.</summary>
internal static class ProofSightings
{
    public static void Write(Utf8JsonWriter json, ProofReadings readings)
    {
        if (readings.Tape is { } tape)
        {
            json.WriteStartObject("tape");
            json.WriteNumber("girthWithinM", tape.GirthWithin.Meters);
            json.WriteNumber("lengthWithinM", tape.LengthWithin.Meters);
            if (tape.WaterPumped is { } water)
            {
                json.WriteNumber("waterPumpedM3", water.Value.CubicMeters);
                if (water.Within is { } within) json.WriteNumber("waterPumpedWithinM3", within.CubicMeters);
            }

            Stretches(json, "girths", tape.Girths);
            Stretches(json, "lengths", tape.Lengths);
            json.WriteEndObject();
        }

        if (readings.Drops.Count > 0)
        {
            json.WriteStartArray("drops");
            foreach (var drops in readings.Drops)
            {
                json.WriteStartObject();
                json.WriteString("place", drops.Place.ToString());
                json.WriteNumber("perSecond", drops.Rate.Hertz);
                json.WriteNumber("atPa", drops.At.Pascals);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        if (readings.Sounds.Count == 0) return;
        json.WriteStartArray("sounds");
        foreach (var sound in readings.Sounds)
        {
            json.WriteStartObject();
            json.WriteString("kind", sound.Kind.ToString());
            json.WriteNumber("atPa", sound.At.Pascals);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static TapeReadings? TapeOf(JsonElement root) => !root.TryGetProperty("tape", out var tape) ? null : new()
    {
        GirthWithin = Length.FromMeters(Number(tape, "girthWithinM")),
        LengthWithin = Length.FromMeters(Number(tape, "lengthWithinM")),
        WaterPumped = tape.TryGetProperty("waterPumpedM3", out var water)
            ? new(Volume.FromCubicMeters(water.GetDouble()), tape.TryGetProperty("waterPumpedWithinM3", out var within)
                ? Volume.FromCubicMeters(within.GetDouble()) : null)
            : null,
        Girths = StretchesOf(tape, "girths"),
        Lengths = StretchesOf(tape, "lengths"),
    };

    public static IReadOnlyList<DropsSeen> DropsOf(JsonElement root) => !root.TryGetProperty("drops", out var drops) ? []
        : [.. drops.EnumerateArray().Select(d => new DropsSeen(Named<LeakPlace>(d, "place"), Frequency.FromHertz(Number(d, "perSecond")),
            GaugePressure.FromPascals(Number(d, "atPa"))))];

    public static IReadOnlyList<SoundHeard> SoundsOf(JsonElement root) => !root.TryGetProperty("sounds", out var sounds) ? []
        : [.. sounds.EnumerateArray().Select(s => new SoundHeard(Named<SoundKind>(s, "kind"),
            GaugePressure.FromPascals(Number(s, "atPa"))))];

    private static void Stretches(Utf8JsonWriter json, string name, IReadOnlyList<StretchReading> readings)
    {
        json.WriteStartArray(name);
        foreach (var reading in readings)
        {
            json.WriteStartObject();
            json.WriteString("station", reading.Station);
            json.WriteNumber("beforeM", reading.Before.Meters);
            json.WriteNumber("atProofM", reading.AtProof.Meters);
            if (reading.After is { } after) json.WriteNumber("afterM", after.Meters);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IReadOnlyList<StretchReading> StretchesOf(JsonElement owner, string name) =>
        [.. owner.GetProperty(name).EnumerateArray().Select(r => new StretchReading(r.GetProperty("station").GetString() ?? "",
            Length.FromMeters(Number(r, "beforeM")), Length.FromMeters(Number(r, "atProofM")),
            r.TryGetProperty("afterM", out var after) ? Length.FromMeters(after.GetDouble()) : null))];

    private static T Named<T>(JsonElement owner, string key) where T : struct, Enum =>
        Enum.TryParse<T>(owner.GetProperty(key).GetString(), out var value) && Enum.IsDefined(value) ? value
            : throw new InvalidOperationException($"its {key} \"{owner.GetProperty(key).GetString()}\" isn't known.");

    private static double Number(JsonElement owner, string key) => owner.GetProperty(key).GetDouble();
}
