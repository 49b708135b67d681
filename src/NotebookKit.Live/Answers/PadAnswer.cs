using NotebookKit.Clearance;
using NotebookKit.Clearance.Cards;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Filling.Vents;
using NotebookKit.Proofing.Records;
using NotebookKit.Quantities;
using NotebookKit.Sheets;
using System.Text.Json;

namespace NotebookKit.Live.Answers;

/// <summary>The pad on a day: the fill against the clock, and the library's flight card on what was shown.</summary>
internal static class PadAnswer
{
    public static void Write(Utf8JsonWriter json, OpenDesign open, string typed)
    {
        using var document = JsonDocument.Parse(typed);
        var (page, design) = (document.RootElement, open.Design);
        var card = Reply.Try(() => CardOf(page, design), out var why);
        var today = DayOfPage.Applied(page, design);
        List<StageOfDay> stages = [.. today.Stages.Select((s, i) => Of(s, EvidenceOf(card, i)))];
        json.WriteStartArray("stages");
        foreach (var stage in stages) WriteStage(json, stage);
        json.WriteEndArray();
        var slowest = stages.Select(s => s.Vent).OfType<VentResult>().MaxBy(v => v.Slowest);
        SheetAnswer.Write(json, "card", card switch
        {
            null => null,
            FlightCard one => FlightSheet.Of(one, slowest).Content,
            TwoStageFlightCard two => FlightSheet.Of(two, slowest).Content,
            _ => FlightSheet.Of(card).Content,
        }, why);
    }

    // The library's own card of a day: the page adds no rule and leaves none out.
    private static IFlightCard CardOf(JsonElement page, Design design) =>
        design.Card(FlightDay.Parse(DayOfPage.Text(page, design), "day"), DayOfPage.Proofs(page), DayOfPage.Services(page));

    private static StageEvidence? EvidenceOf(IFlightCard? card, int stage) => card switch
    {
        FlightCard one => one.Evidence,
        TwoStageFlightCard two => stage == 0 ? two.Evidence.Booster : two.Evidence.Sustainer,
        _ => null,
    };

    // Without a proved vessel the clock runs on the design's rating, and says so.
    private static StageOfDay Of(DesignStage stage, StageEvidence? shown)
    {
        var unfilled = "";
        var run = shown?.Fill ?? Reply.Try(() => DesignSheets.FillOf(stage).Run(), out unfilled);
        var vent = run is null || stage.Pad?.Vent is not { } hole ? null : Reply.Try(() => new Vent
        {
            Chamber = run.Fill.Chamber, Restrictor = hole, From = run.Fill.Target, WaterFraction = run.Fill.WaterFraction,
            Port = run.Fill.Port, Gas = run.Fill.Gas, Ambient = run.Fill.Ambient, Temperature = run.Fill.Temperature,
        }.Run(), out _);
        return new(stage, shown?.Vessel, run, unfilled, vent);
    }

    private static void WriteStage(Utf8JsonWriter json, StageOfDay of)
    {
        json.WriteStartObject();
        json.WriteString("name", of.Stage.Name);
        json.WriteString("proved", of.Proved is { } proved ? $"{proved.Vessel} {proved.Serial}, maximum fill pressure {proved.Allowed}"
            : "");
        json.WriteString("unfilled", of.Run is null ? of.Unfilled : "");
        if (of.Run is { } run)
        {
            var sheet = Reply.Try(() => PadSheet.Of(of.Stage.Name, run, of.Vent, null, of.Stage.Pad), out var why);
            json.WriteNumber("shutS", run.Duration.Seconds);
            json.WriteNumber("waterFirstS", run.WaterFirst?.Seconds ?? 0);
            json.WriteString("shutAt", run.ShutPressure.ToString());
            json.WriteString("settlesAt", run.SettledPressure.ToString());
            json.WriteString("never", run.Fill.Chamber.RatedPressure.ToString());
            Values(json, "timeS", run.Time);
            Values(json, "gaugeBar", run.Pressure);
            Values(json, "gasC", run.Temperature);
            json.WriteString("chart", LineChart.Draw($"Fill, {of.Stage.Name}", run.Time, run.Pressure,
                (run.Fill.Chamber.RatedPressure.Bar, "rated")));
            SheetAnswer.Write(json, "sheet", sheet?.Content, why);
        }

        json.WriteEndObject();
    }

    private static void Values(Utf8JsonWriter json, string name, Series column)
    {
        json.WriteStartArray(name);
        foreach (var value in column.Values) json.WriteNumberValue(value);
        json.WriteEndArray();
    }

    private sealed record StageOfDay(DesignStage Stage, ProvedVessel? Proved, FillResult? Run, string Unfilled, VentResult? Vent);
}
