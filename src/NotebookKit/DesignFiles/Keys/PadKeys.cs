using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Filling.Supply;
using NotebookKit.Quantities;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>What it is filled with at the pad.</summary>
internal static class PadKeys
{
    private static readonly WordShape<PadPartKind> PartKind = new("kind of part", ("cylinder", PadPartKind.Cylinder),
        ("regulator", PadPartKind.Regulator), ("fill valve", PadPartKind.FillValve), ("hose", PadPartKind.Hose),
        ("restrictor", PadPartKind.Restrictor), ("check valve", PadPartKind.CheckValve), ("gauge", PadPartKind.Gauge),
        ("dump valve", PadPartKind.DumpValve), ("relief valve", PadPartKind.ReliefValve));

    private static readonly ObjectShape<Hose> HoseShape = new("hose", "A hose between regulator and restrictor.", f =>
    {
        var bore = f.Needs("bore", Kinds.Millimetres(0.5, 50, "Measure the inside."), "Internal diameter.");
        var length = f.Needs("length", Kinds.Metres(0.01, 200, "Measure from end to end."), "Its length.");
        var friction = f.Has("friction factor", Kinds.Number(0.005, 0.1, "It is Darcy's, four times Fanning's."), 0.02, "Darcy friction "
            + "factor.");
        return v => new(bore(v), length(v), friction(v));
    });

    private static readonly ChoiceShape<IRestrictor> RestrictorShape = new("restrictor", "kind",
        (["orifice"], "A drilled hole.", f =>
        {
            var diameter = f.Needs("diameter", Kinds.Millimetres(0.05, 50, "Give the drill's size."), "Diameter of the hole.");
            var discharge = f.Has("discharge coefficient", Kinds.Number(0.3, 1, "A sharp edge has 0.6 to 0.85 in gas."), 0.8,
                "Flow over ideal flow.");
            return v => new Orifice(diameter(v), discharge(v));
        }),
        (["measured"], "A passage as a data sheet or a fill's log gives it.", f =>
        {
            var conductance = f.Needs("conductance", Kinds.Between(0.0001.LitresPerSecondBar(), 100.LitresPerSecondBar(),
                "A hole of 0.5 mm has about 0.03."), "Sonic conductance with air.");
            var ratio = f.Has("critical ratio", Kinds.Number(0, 0.7, "An ideal nozzle has 0.528."), 0.5, "Critical pressure ratio b.");
            f.Part("log", TextShape.Prose, "Which log or data sheet it is from.");
            return v => new SonicRestrictor(conductance(v), ratio(v));
        }));

    private static readonly ObjectShape<SourceCylinder> CylinderShape = new("cylinder", "The cylinder behind the regulator.", f =>
    {
        var name = f.Needs("name", TextShape.Name, "What is painted on it.");
        var volume = f.Needs("volume", Kinds.Between(0.1.Litres(), 200.Litres(), "A diving cylinder holds 3 to 20 L."), "Water volume.");
        var pressure = f.Needs("pressure", Kinds.BarGauge(0, 300, "Diving cylinders are filled to 200, 232 or 300 bar gauge."),
            "Gauge pressure when full.");
        return v => new SourceCylinder(name(v), volume(v), pressure(v));
    });

    private static readonly ObjectShape<PadPart> PartShape = new("part of the line", "A part that is in the line, and its rating.", f =>
    {
        var kind = f.Needs("kind", PartKind, "What it does.");
        var rated = f.May("rated to", Kinds.BarGauge(0.5, 2000, "Read it off the part or its data sheet, or leave it out."),
            "Pressure that it is rated to; of a gauge the end of its scale.");
        return v => new PadPart(kind(v), PartKind.Write(kind(v))) { RatedTo = rated(v) };
    });

    /// <summary>What a part may be, in the words of a file.</summary>
    public static IReadOnlyList<string> PartKinds => [.. Enum.GetValues<PadPartKind>().Where(k => k != PadPartKind.Vessel)
        .Select(PartKind.Write)];

    /// <summary>A part that stands on the pad on a day: the very one, with its serial.</summary>
    public static ObjectShape<PadPart> PartOfDay { get; } = new("part of the day", "A part that stands on the pad today.", f =>
    {
        var kind = f.Needs("kind", PartKind, "What it does.");
        var serial = f.Part("serial", TextShape.Name, "Number that is stamped or painted on it.");
        var rated = f.May("rated to", Kinds.BarGauge(0.5, 2000, "Read it off the part or its data sheet, or leave it out."),
            "Pressure that it is rated to; of a gauge the end of its scale.");
        return v => new(kind(v), PartKind.Write(kind(v))) { RatedTo = rated(v), Serial = serial(v) ?? "" };
    });

    public static ObjectShape<PadEquipment> Pad { get; } = new("pad", "What it is filled with at the pad; what is left out isn't given.",
        f =>
    {
        var regulator = f.May("regulator", Kinds.BarGauge(0.5, 300, "It may not pass what the vessel is rated to."),
            "Pressure that the regulator is set to.");
        var restrictor = f.Part("restrictor", RestrictorShape, "Smallest passage on the way in.");
        var hose = f.Part("hose", HoseShape, "A hose ahead of it that takes pressure; none unless given.");
        var port = f.Has("port", new WordShape<PortPosition>("place of the filling port", ("under water", PortPosition.UnderWater),
            ("above water", PortPosition.AboveWater), ("not given", PortPosition.NotGiven)), PortPosition.NotGiven,
            "Where the filling port lies.");
        var line = f.May("water in line", Kinds.Between(0.01.Millilitres(), 10.Litres(), "A metre of 6 mm hose holds 28 mL."),
            "Water that stands in port and line.");
        var check = f.May("check valve", Kinds.Flag, "Whether a check valve keeps water from running back; as the parts say unless given.");
        var vent = f.Part("vent", RestrictorShape, "Smallest passage on the way out through the dump valve.");
        var cylinder = f.Part("cylinder", CylinderShape, "The cylinder.");
        var parts = f.Else("parts", Kinds.List(PartShape, 1, 9), [], "Parts that are in the line, each kind once.");
        return v => new()
        {
            Regulator = regulator(v), Restrictor = restrictor(v), Hose = hose(v), Port = port(v), WaterInLine = line(v),
            CheckValve = check(v), Vent = vent(v), Cylinder = cylinder(v), Parts = parts(v),
        };
    });
}
