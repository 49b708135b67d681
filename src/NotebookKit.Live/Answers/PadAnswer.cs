using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Clearance;
using NotebookKit.Clearance.Cards;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Vents;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Flights;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Sheets;
using System.Globalization;
using System.Text.Json;
using UnitsNet;

namespace NotebookKit.Live.Answers;

/// <summary>The pad on a day: the fill against the clock, and the flight card on what was shown.</summary>
internal static class PadAnswer
{
    public static void Write(Utf8JsonWriter json, OpenDesign open, string day)
    {
        using var document = JsonDocument.Parse(day);
        var (typed, design) = (document.RootElement, open.Design);
        var site = SiteOf(typed, design.Site ?? throw new FormatException("The design gives no site to fly from."));
        var air = ReadingJson.Quantity<Temperature>(typed, "temperature", "temperature");
        List<StageOfDay> stages = [.. design.Stages.Select((s, i) => Of(s, i, typed, site, air))];
        json.WriteStartArray("stages");
        foreach (var stage in stages) WriteStage(json, stage);
        json.WriteEndArray();
        var slowest = stages.Select(s => s.Vent).OfType<VentResult>().MaxBy(v => v.Slowest);
        var date = DateOnly.TryParseExact(ReadingJson.Text(typed, "day"), "yyyy-MM-dd", CultureInfo.InvariantCulture,
            DateTimeStyles.None, out var on) ? on : (DateOnly?)null;
        var scatter = ReadingJson.Number(typed, "flights") is { } flights
            ? (design.Scatter ?? new DesignScatter(0, 11, new Spread())) with { Flights = (int)flights } : null;
        List<Finding> against = [.. DayVerbs.Requirements(design)];
        if (ReadingJson.Quantity<Speed>(typed, "wind", "wind") is null) against.Add(ClearanceFindings.WindOfDayIsNotGiven());
        var card = Reply.Try(() => stages.Count == 1 ? OfOne(stages[0], site, date, slowest, scatter, against)
            : OfTwo(design.TwoStageVehicle, stages, site, date, slowest, scatter, against), out var why);
        SheetAnswer.Write(json, "card", card?.Content, why);
    }

    private static FlightSheet OfOne(StageOfDay stage, LaunchSite site, DateOnly? day, VentResult? vent, DesignScatter? scatter,
        IReadOnlyList<Finding> against)
    {
        var vehicle = stage.Flying();
        return FlightSheet.Of(vehicle.Card(site, stage.Fill(new FlightEvidence
        {
            Day = day, Against = against, StandOff = Reply.Try(() => vehicle.StandOff(site), out _),
            Scatter = scatter is null ? null : Reply.Try(() => vehicle.Disperse(site, scatter.Spread, scatter.Flights, scatter.Seed),
                out _),
        }, vehicle, site)), vent);
    }

    private static FlightSheet OfTwo(TwoStageVehicle pair, List<StageOfDay> stages, LaunchSite site, DateOnly? day, VentResult? vent,
        DesignScatter? scatter, IReadOnlyList<Finding> against)
    {
        var vehicle = pair with { Booster = stages[0].Flying(), Sustainer = stages[1].Flying() };
        return FlightSheet.Of(vehicle.Card(site, new TwoStageEvidence
        {
            Day = day, Against = against, StandOff = Reply.Try(() => vehicle.StandOff(site), out _),
            Scatter = scatter is null ? null : Reply.Try(() => vehicle.Disperse(site, new TwoStageSpread { Both = scatter.Spread },
                scatter.Flights, scatter.Seed), out _),
            Booster = stages[0].Fill(new StackStageEvidence(), vehicle.Booster, site),
            Sustainer = stages[1].Fill(new StackStageEvidence(), vehicle.Sustainer, site),
            StackStability = Reply.Try(() => vehicle.Stack(site).Stability(), out _),
        }), vent);
    }

    private static LaunchSite SiteOf(JsonElement typed, LaunchSite site)
    {
        var (air, pressure) = (ReadingJson.Quantity<Temperature>(typed, "temperature", "temperature"),
            ReadingJson.Quantity<AbsolutePressure>(typed, "pressure", "air pressure"));
        if (air is not null || pressure is not null)
            site = site with { Atmosphere = Atmosphere.OfTheDay(site.Elevation, air ?? site.Temperature, pressure ?? site.Pressure) };
        if (ReadingJson.Quantity<Speed>(typed, "wind", "wind") is { } wind)
            site = site with { Wind = WindProfile.PowerLaw(wind, 10.Metres(), from: ReadingJson.Quantity<Angle>(typed, "from",
                "wind direction")) };
        return site;
    }

    private static StageOfDay Of(DesignStage stage, int number, JsonElement typed, LaunchSite site, Temperature? air)
    {
        var own = ReadingJson.Items(typed, "stages").ElementAtOrDefault(number);
        var text = own.ValueKind == JsonValueKind.Object ? ReadingJson.Text(own, "proof") : "";
        var why = "";
        var proved = text.Length == 0 ? null
            : Reply.Try(() => DayVerbs.Prove(stage, ProofRecord.FromJson(text, "The proof record")), out why);
        var service = own.ValueKind == JsonValueKind.Object ? Service(ReadingJson.Text(own, "service")) : null;
        var fill = Reply.Try(() => DesignSheets.FillOf(stage), out var unfilled);
        if (fill is not null && proved is not null) fill = fill with { Chamber = proved.Chamber };
        if (fill is not null) fill = fill with { Ambient = site.Pressure, Temperature = air ?? fill.Temperature };
        var run = fill is null ? null : Reply.Try(() => fill.Run(), out unfilled);
        var vent = fill is null || stage.Pad?.Vent is not { } hole ? null : Reply.Try(() => new Vent
        {
            Chamber = fill.Chamber, Restrictor = hole, From = fill.Target, WaterFraction = fill.WaterFraction, Port = fill.Port,
            Gas = fill.Gas, Ambient = fill.Ambient, Temperature = fill.Temperature,
        }.Run(), out _);
        var wall = ReadingJson.Quantity<Temperature>(typed, "wall", "temperature of the vessel's wall");
        return new(stage, proved, why, service, run, unfilled, vent, wall, air);
    }

    // The record is read from a file as everywhere; the page's own files live in memory.
    private static ServiceRecord? Service(string text)
    {
        if (text.Length == 0) return null;
        const string Path = "/service.jsonl";
        File.WriteAllText(Path, text + (text.EndsWith('\n') ? "" : "\n"));
        return ServiceFile.Read(Path);
    }

    private static void WriteStage(Utf8JsonWriter json, StageOfDay of)
    {
        json.WriteStartObject();
        json.WriteString("name", of.Stage.Name);
        json.WriteString("proved", of.Proved is { } proved ? $"{proved.Vessel} {proved.Serial}, maximum fill pressure {proved.Allowed}"
            : "");
        json.WriteString("unproved", of.Unproved);
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

    private sealed record StageOfDay(DesignStage Stage, ProvedVessel? Proved, string Unproved, ServiceRecord? Service, FillResult? Run,
        string Unfilled, VentResult? Vent, Temperature? Wall, Temperature? Air)
    {
        public Vehicle Flying()
        {
            var vehicle = Proved is { } proved ? Stage.Vehicle.On(proved) : Stage.Vehicle;
            return Air is { } air ? vehicle with { Charge = vehicle.Charge with { GasTemperature = air } } : vehicle;
        }

        public T Fill<T>(T evidence, Vehicle vehicle, LaunchSite site) where T : StageEvidence => evidence with
        {
            Vessel = Proved, Service = Service, VesselTemperature = Wall, Fill = Run, Pad = Stage.Pad,
            Recovery = Reply.Try(() => Stage.RecoveryGear?.Check(), out _),
            Stability = Reply.Try(() => vehicle.Stability(), out _),
            Fins = Stage.FinSheet is { } sheet && Stage.FinBond is { } bond && Stage.FinGust is { } gust && Stage.Body is { } body
                ? Reply.Try(() => Fins(body, sheet, bond, gust, vehicle, site), out _) : null,
        };

        private static List<FinStructureResult> Fins(FinnedBody body, FinSheet sheet, FinBond bond, Speed gust, Vehicle vehicle,
            LaunchSite site)
        {
            var fastest = LaunchStandOff.WithLightDrag(vehicle).Fly(site).Figures.MaximumSpeed;
            AirConditions air = new(site.Pressure, site.Temperature);
            return [.. Enumerable.Range(0, body.Fins.Count).Select(i => body.FinStructure(sheet, bond, fastest, gust, air, i))];
        }
    }
}
