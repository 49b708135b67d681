using System.Globalization;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
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
            "Water in the resin by weight, as measured; that of a saturated resin unless given with how it was measured.");
        var label = f.Part("label", TextShape.Label, "Mark on the vessel's label, as the last command on its service record named it: "
            + "\"3f9a-71c2\".");
        var by = f.Part("resin moisture by", TextShape.Prose, "How the moisture was measured: \"strip of the batch, weighed and dried\".");
        return v => new(serial(v), wall(v), moisture(v) is not { } water ? null : by(v)?.Trim() is { Length: > 0 } how
            ? Property.Measured(water, 0, how) : Property.Unverified(water, 0, DesignFilesFindings.MoistureNotSaidHow))
        {
            Label = label(v) is not { } read ? null : TextShape.LabelMark().Match(read.ToLowerInvariant()).Groups is var part
                ? $"{part[1].Value}-{part[2].Value}" : null,
        };
    });

    private static readonly ObjectShape<ChangeOfDay> ChangeShape = new("change of the day",
        "A value of the design that is otherwise today.", f =>
    {
        var name = f.Needs("of", TextShape.Prose, "Path or plain name of the value: \"site.wind.speed\".");
        var value = f.Needs("is", TextShape.Prose, "The value with its unit.");
        return v => new(name(v), value(v))
        {
            Line = TreePath.Find(v.Spot.Run.Root, v.Spot.Path)?.At.Line ?? 0,
            Column = TreePath.Find(v.Spot.Run.Root, v.Spot.Path)?.At.Column ?? 0,
        };
    });

    /// <summary>The whole file.</summary>
    public static ObjectShape<DayContent> All { get; } = new("day of a flight", "What is measured and decided on the day of a flight.", f =>
    {
        f.Part("$schema", TextShape.Prose, "Where the schema is, for editors.");
        var day = f.Needs("day", TextShape.Day, "The day: 2026-05-02.");
        var flight = f.Else("flight", TextShape.Prose, "", "The flight as the club counts it.");
        var vessels = f.Needs("vessels", Kinds.List(VesselShape, 1, 2), "The vessels that are filled; the booster's first.");
        var order = f.Part("fill order", new WordShape<string>("order of filling", ("booster first", "booster first"),
            ("sustainer first", "sustainer first"), ("together", "together")), "Which of two vessels is filled first.");
        var changes = f.Else("changes", Kinds.List(ChangeShape, 0, 50), [], "Values of the design that are otherwise today.");
        var gear = f.Else("gear", Kinds.List(PadKeys.PartOfDay, 0, 30), [], "The very parts that stand on the pad today.");
        return v => new(DateOnly.ParseExact(day(v), TextShape.DayForm, CultureInfo.InvariantCulture), flight(v), vessels(v),
            order(v) ?? "", changes(v))
        {
            Gear = gear(v),
        };
    });
}
