using NotebookKit.Proofing.Plans;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Sheets;
using System.Globalization;
using System.Text.Json;
using UnitsNet;

namespace NotebookKit.Live.Answers;

/// <summary>A proof at the bench: the plan, a reading at a step, the readings judged. Every verdict is the library's.</summary>
internal static class ProofAnswer
{
    public static void WritePlan(Utf8JsonWriter json, OpenDesign open, int stage)
    {
        var of = open.Design.Stages[stage];
        var plan = of.Proof.Plan();
        var sheet = ProofSheet.Of(plan, of.Vessel);
        json.WriteString("vessel", plan.Proof.Vessel);
        json.WriteString("proof", plan.ProofPressure.ToString());
        json.WriteString("standOff", plan.StandOff.Distance.Show());
        json.WriteNumber("volumeMl", plan.Proof.Volume.Milliliters);
        Reply.Texts(json, "before", ProofChecklist.Before(plan));
        Reply.Texts(json, "after", ProofChecklist.After(plan));
        Reply.Texts(json, "abort", SheetRules.AbortProof(plan.StandOff.Distance));
        Reply.Findings(json, "findings", plan.Findings);
        json.WriteStartArray("steps");
        for (var i = 0; i < plan.Steps.Count; i++)
        {
            var step = plan.Steps[i];
            json.WriteStartObject();
            json.WriteNumber("bar", step.Pressure.Bar);
            json.WriteString("pressure", step.Pressure.ToString());
            json.WriteNumber("holdS", step.Hold.Seconds);
            json.WriteNumber("waterMl", step.WaterToPump.Milliliters);
            if (i < sheet.Girths.Count) json.WriteString("girth", sheet.Girths[i].Show(5));
            json.WriteBoolean("down", ProofChecklist.IsDown(plan, i));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void WriteStep(Utf8JsonWriter json, OpenDesign open, int stage, string reading)
    {
        using var document = JsonDocument.Parse(reading);
        var typed = document.RootElement;
        var advice = new StepReading
        {
            Plan = open.Design.Stages[stage].Proof.Plan(),
            Step = (int)(ReadingJson.Number(typed, "step") ?? 0),
            Gauge = (ReadingJson.Number(typed, "bar") ?? throw new FormatException("Read the gauge and type its bar.")).BarGauge(),
            AtStart = ReadingJson.Number(typed, "startBar")?.BarGauge(),
            Held = ReadingJson.Number(typed, "heldS")?.Seconds(),
            Pumped = ReadingJson.Number(typed, "waterMl")?.Millilitres(),
            GaugeError = GaugeError(typed),
            Drops = Drops(typed),
            Sounds = Sounds(typed),
        }.Advise();
        json.WriteString("call", advice.Call switch
        {
            ProofCall.GoOn => "Go on", ProofCall.Hold => "Hold", _ => "Stop and vent",
        });
        Reply.Findings(json, "reasons", advice.Reasons);
        json.WriteNumber("expectedMl", advice.Expected.Milliliters);
        if (advice.Left is { } left) json.WriteNumber("leftS", left.Seconds);
    }

    public static void WriteJudgement(Utf8JsonWriter json, OpenDesign open, int stage, string readings)
    {
        var of = open.Design.Stages[stage];
        using var document = JsonDocument.Parse(readings);
        var record = (Readings(document.RootElement, of.Proof) with { MadeAs = of.Mark }).Judge();
        json.WriteString("title", record.Title);
        json.WriteString("verdict", record.Verdict.ToString());
        Reply.Lines(json, "lines", record.Lines);
        Reply.Findings(json, "findings", record.Findings);
        var proved = Reply.Try(() => record.ToProvedVessel(of.Rating), out var why);
        json.WriteString("proved", proved is null ? ""
            : $"Proves {proved.Vessel} {proved.Serial}: maximum fill pressure {proved.Allowed}.");
        json.WriteString("why", why);
        json.WriteString("file", record.ToJson());
    }

    private static ProofReadings Readings(JsonElement typed, Proof proof)
    {
        var rows = ReadingJson.Items(typed, "rows").ToList();
        Series Column(string name, string unit, string key, double missing) =>
            new(name, unit, [.. rows.Select(r => ReadingJson.Number(r, key) ?? missing)]);
        bool Everywhere(string key) => rows.Count > 0 && rows.TrueForAll(r => ReadingJson.Number(r, key) is not null);
        List<Finding> said = [];
        foreach (var (key, what) in new[] { ("celsius", "temperature"), ("waterMl", "water pumped") })
            if (!Everywhere(key) && rows.Exists(r => ReadingJson.Number(r, key) is not null))
                said.Add(Finding.Warning($"The {what} wasn't typed at every reading, so it isn't used."));
        var (serial, day) = (ReadingJson.Text(typed, "serial"), ReadingJson.Text(typed, "day"));
        return new()
        {
            Proof = proof,
            Vessel = ReadingJson.Text(typed, "vessel") is { Length: > 0 } name ? name : null,
            Serial = serial.Length > 0 ? serial : null,
            Day = DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var on) ? on : null,
            Time = Column("Time", "s", "s", double.NaN),
            Pressure = Column("Pressure", "bar gauge", "bar", double.NaN),
            Temperature = Everywhere("celsius") ? Column("Temperature", "°C", "celsius", double.NaN) : null,
            Expansion = Everywhere("waterMl") ? Column("Water pumped in", "mL", "waterMl", double.NaN) : null,
            GaugeError = GaugeError(typed),
            Tape = Tape(typed),
            Drops = Drops(typed),
            Sounds = Sounds(typed),
            OfLog = said,
        };
    }

    // What wasn't said isn't guessed: a verdict would rest on the guess.
    private static Pressure GaugeError(JsonElement typed) => (ReadingJson.Number(typed, "errorBar") ?? throw new FormatException(
        "Type what the gauge can't tell apart, in bar: half of its smallest division, or what its certificate says.")).Bar();

    private static TapeReadings? Tape(JsonElement typed)
    {
        var (girths, lengths) = (Stretches(typed, "girths"), Stretches(typed, "lengths"));
        return girths.Count + lengths.Count == 0 ? null : new()
        {
            Girths = girths,
            Lengths = lengths,
            GirthWithin = Within("girthWithinMm", "girth tape"),
            LengthWithin = Within("lengthWithinMm", "length rule"),
        };

        Length Within(string key, string tool) => (ReadingJson.Number(typed, key) ?? throw new FormatException(
            $"Type what the {tool} can't tell apart, in mm: half of its smallest division.")).Millimetres();
    }

    private static List<StretchReading> Stretches(JsonElement typed, string key) => [.. ReadingJson.Items(typed, key).Select(s =>
    {
        var (station, what) = (ReadingJson.Text(s, "station"), key == "girths" ? "girth" : "length");
        Length At(string when, string said) => (ReadingJson.Number(s, when) ?? throw new FormatException(
            $"The {what} at \"{station}\" wasn't read {said}: type its millimetres, or delete the row.")).Millimetres();
        return new StretchReading(station, At("beforeMm", "before the proof"), At("atProofMm", "at the proof pressure"),
            ReadingJson.Number(s, "afterMm")?.Millimetres());
    })];

    private static IReadOnlyList<DropsSeen> Drops(JsonElement typed) => [.. ReadingJson.Items(typed, "drops").Select(d => new DropsSeen(
        Enum.TryParse<LeakPlace>(ReadingJson.Text(d, "place"), out var place) ? place
            : throw new FormatException("Choose where the drops are seen."),
        Frequency.FromCyclesPerMinute(ReadingJson.Number(d, "perMinute")
            ?? throw new FormatException("Count the drops of one minute and type their number.")), Gauge(d)))];

    private static IReadOnlyList<SoundHeard> Sounds(JsonElement typed) => [.. ReadingJson.Items(typed, "sounds").Select(s => new SoundHeard(
        Enum.TryParse<SoundKind>(ReadingJson.Text(s, "kind"), out var kind) ? kind : SoundKind.Crack, Gauge(s)))];

    private static GaugePressure Gauge(JsonElement seen) =>
        (ReadingJson.Number(seen, "atBar") ?? throw new FormatException("Read the gauge and type its bar.")).BarGauge();
}
