using System.Globalization;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Materials.Solids;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>What is measured and decided on the day of a flight.</summary>
internal static class DayKeys
{
    private static readonly ObjectShape<VesselOfDay> VesselShape = new("vessel of the day", "The very vessel that is filled.", f =>
    {
        var serial = f.Needs("serial", TextShape.Name, "Its serial, as its service record has it.");
        var wall = f.May("wall temperature", Kinds.Celsius(-60, 150, "Measure the wall at its warmest place, in the sun."),
            "Temperature of the wall at its warmest place.");
        var moisture = f.May("resin moisture", Kinds.Percent(0, 10, "Weigh a strip that is kept with the vessel."),
            "Water in the resin by weight; that of a saturated resin unless given.");
        var by = f.Else("resin moisture by", TextShape.Prose, "weighed, by the file of the day", "How the moisture was measured.");
        return v => new(serial(v), wall(v), moisture(v) is { } water ? Property.Measured(water, 0, by(v)) : null);
    });

    private static readonly ObjectShape<ChangeOfDay> ChangeShape = new("change of the day",
        "A value of the design that is otherwise today.", f =>
    {
        var name = f.Needs("of", TextShape.Prose, "Path or plain name of the value: \"site.wind.speed\".");
        var value = f.Needs("is", TextShape.Prose, "The value with its unit.");
        return v => new(name(v), value(v));
    });

    /// <summary>The whole file.</summary>
    public static ObjectShape<DayContent> All { get; } = new("day of a flight", "What is measured and decided on the day of a flight.", f =>
    {
        var day = f.Needs("day", TextShape.Name, "The day: 2026-05-02.");
        var flight = f.Else("flight", TextShape.Prose, "", "The flight as the club counts it.");
        var vessels = f.Needs("vessels", Kinds.List(VesselShape, 1, 2), "The vessels that are filled; the booster's first.");
        var order = f.Part("fill order", new WordShape<string>("order of filling", ("booster first", "booster first"),
            ("sustainer first", "sustainer first"), ("together", "together")), "Which of two vessels is filled first.");
        var changes = f.Else("changes", Kinds.List(ChangeShape, 0, 50), [], "Values of the design that are otherwise today.");
        return v => new(DateOnly.TryParseExact(day(v), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var on) ? on
            : throw new FormatException(DesignFilesFindings.NotADay(day(v))), flight(v), vessels(v), order(v) ?? "", changes(v));
    });
}
