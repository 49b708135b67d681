using System.Text.Json;
using NotebookKit.Charts.Results;
using NotebookKit.DesignFiles;
using NotebookKit.Flight.Staging;
using UnitsNet.Units;

namespace NotebookKit.Live.Answers;

/// <summary>Drawings and charts of a design, each with its words; what can't be drawn says why.</summary>
internal static class PictureAnswer
{
    public static void Write(Utf8JsonWriter json, OpenDesign open)
    {
        var design = open.Design;
        json.WriteStartArray("pictures");
        foreach (var stage in design.Stages)
        {
            var drawing = Reply.Try(() => stage.Vehicle.Draw(), out var why);
            Picture(json, $"{stage.Name}, to scale", drawing?.Svg ?? "", drawing?.Narrow ?? "", drawing?.Description ?? "", why);
        }

        foreach (var (name, flight, why) in Flights(design))
        {
            var ceiling = design.Site?.Ceiling is { } c ? (c.As(LengthUnit.Meter), "ceiling") : ((double, string)?)null;
            Picture(json, $"Height, {name}", flight is null ? "" : LineChart.Draw($"Height, {name}", flight.Time, flight.Height, ceiling),
                why);
            Picture(json, $"Speed, {name}", flight is null ? "" : LineChart.Draw($"Speed, {name}", flight.Time, flight.Speed), why);
        }

        foreach (var stage in design.Stages)
        {
            var margin = Reply.Try(() => stage.Vehicle.Stability(), out var unstable);
            Picture(json, $"Static margin, {stage.Name}", margin is null ? "" : LineChart.Draw($"Static margin, {stage.Name}",
                margin.Abscissa, margin.Margin, (margin.Limits.Minimum, "required")), unstable);
            var fill = Reply.Try(() => stage.PadFill?.Run(), out var why);
            Picture(json, $"Fill, {stage.Name}", fill is null ? "" : LineChart.Draw($"Fill, {stage.Name}", fill.Time, fill.Pressure,
                (fill.Fill.Chamber.RatedPressure.Bar, "rated")),
                why.Length > 0 ? why : "The design doesn't give regulator and restrictor.");
        }

        json.WriteEndArray();
    }

    /// <summary>The flights of a design as expected, by name.</summary>
    public static IReadOnlyList<(string Name, FlightResult? Flight, string Why)> Flights(Design design)
    {
        if (design.Site is not { } site) return [(design.Name, null, "The design gives no site to fly from.")];
        if (design.Stages.Count == 1)
        {
            var flight = Reply.Try(() => design.Vehicle.Fly(site), out var why);
            return [(design.Name, flight, why)];
        }

        var both = Reply.Try(() => design.TwoStageVehicle.Fly(site), out var reason);
        return [("sustainer", both is null ? null : Reply.Try(() => both.Sustainer, out reason), reason),
            ("booster", both is null ? null : Reply.Try(() => both.Booster, out reason), reason)];
    }

    private static void Picture(Utf8JsonWriter json, string title, string svg, string why) => Picture(json, title, svg, "", "", why);

    private static void Picture(Utf8JsonWriter json, string title, string svg, string narrow, string words, string why)
    {
        json.WriteStartObject();
        json.WriteString("title", title);
        json.WriteString("svg", svg);
        json.WriteString("narrow", narrow);
        json.WriteString("words", words);
        json.WriteString("why", svg.Length > 0 ? "" : why);
        json.WriteEndObject();
    }
}
