using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>What a flight needs beside the vehicle's shape: fins as structure, recovery gear, scatter.</summary>
internal static class EquipmentKeys
{
    private static readonly UnitShape<Force> Load = Kinds.Between(1.Newtons(), 100_000.Newtons(),
        "Pull it on the bench until it gives way.");

    private static readonly ObjectShape<FinSheet> SheetShape = new("fin sheet", "What the fins are cut from.", f =>
    {
        var name = f.Needs("name", TextShape.Prose, "What it is.");
        var shear = f.Needs("shear modulus", Kinds.Gigapascals(0.1, 100, "5 GPa for a 0/90 carbon sheet, 30 GPa for ±45 cloth."),
            "Shear modulus that twisting sees.");
        var flexural = f.Needs("flexural strength", Kinds.Gigapascals(0.001, 3, "Bend a strip to failure."),
            "Bending stress at which it breaks.");
        var source = f.Else("source", TextShape.Prose, "the design's file, source not given", "Where the values come from.");
        return v => new(name(v), shear(v), flexural(v), Source.CommonPractice(source(v)));
    });

    private static readonly ObjectShape<FinBond> BondShape = new("fin bond", "The two fillets that hold a fin.", f =>
    {
        var leg = f.Needs("fillet leg", Kinds.Millimetres(1, 50, "It is about the fillet's radius."), "Leg of the fillet.");
        var strength = f.Needs("strength", Kinds.Gigapascals(0.0005, 0.06, "Pull a sample of the weakest surface."),
            "Stress that its weakest surface takes.");
        var source = f.Else("source", TextShape.Prose, "the design's file, source not given", "Where the strength comes from.");
        return v => new(leg(v), strength(v), Source.CommonPractice(source(v)));
    });

    private static readonly ObjectShape<ShockCord> CordShape = new("cord", "The cord between the halves.", f =>
    {
        var stiffness = f.Needs("stiffness", Kinds.Between(ForcePerLength.FromNewtonsPerMeter(10), ForcePerLength.FromNewtonsPerMeter(1e6),
            "Hang a known weight on it."), "Pull per stretch of its whole length.");
        var breaking = f.Needs("breaking load", Load, "Load at which it or its knot breaks.");
        return v => new(stiffness(v), breaking(v));
    });

    private static readonly ObjectShape<PinJoint> JointShape = new("pin joint", "A joint held by shear pins.", f =>
    {
        var force = Kinds.Between(0.Newtons(), 1_000_000.Newtons(), "It is a force in newtons.");
        var count = f.Needs("pins", Kinds.Count(1, 12, "One to twelve pins can be computed."), "Number of pins.");
        var diameter = f.Needs("pin diameter", Kinds.Millimetres(0.5, 10, "Take the root of a thread."), "Diameter in the shear plane.");
        var strength = f.Needs("pin shear strength", Kinds.Gigapascals(0.005, 0.5, "Nylon has about 60 MPa."), "Shear strength of a pin.");
        var bore = f.Needs("piston bore", Kinds.Millimetres(5, 1000, "Give the inside diameter."), "Bore of the compartment.");
        var separating = f.Needs("separating force", force, "Force of the charge, spring or piston.");
        var drag = f.Has("drag separation", force, 0.Newtons(), "Force by which drag pulls the joint apart.");
        var trapped = f.Has("trapped pressure", Kinds.BarGauge(0, 1, "A vent hole takes it to none."), 0.BarGauge(), "Pressure of trapped "
            + "air.");
        return v => new(new ShearPins(count(v), diameter(v), strength(v)), bore(v), separating(v))
        {
            DragSeparation = drag(v), Trapped = trapped(v),
        };
    });

    public static ObjectShape<FinContent> FinStructure { get; } = new("fin structure", "The fins as structure.", f =>
    {
        var sheet = f.Needs("sheet", SheetShape, "What the fins are cut from.");
        var bond = f.Needs("bond", BondShape, "The fillets that hold them.");
        var gust = f.Needs("gust", Kinds.MetresPerSecond(0, 30, "Take the gust of the worst day you fly in."),
            "Sideways gust to bear at the maximum speed.");
        return v => new(sheet(v), bond(v), gust(v));
    });

    public static ObjectShape<GearContent> Gear { get; } = new("recovery gear", "What holds the halves together and the canopy on.", f =>
    {
        var cord = f.Needs("cord", CordShape, "The cord between the halves.");
        var front = f.Needs("front", Kinds.Grams(1, 50_000, "Weigh the half that is thrown off."), "Mass of the half that is thrown off; "
            + "the other one is the rest.");
        var apart = f.Needs("apart", Kinds.MetresPerSecond(0.1, 100, "Film it against a rule."), "Speed at which the halves come apart.");
        var anchor = f.Needs("anchor", Load, "Load at which bulkhead, eye or knot gives way.");
        var joint = f.Part("joint", JointShape, "The joint's pins; held by friction alone unless given.");
        return v => new(cord(v), front(v), apart(v), anchor(v), joint(v));
    });

    public static ObjectShape<DesignScatter> Scatter { get; } = new("scatter",
        "How its landings scatter: so many flights, each with its own draw.", f =>
    {
        var plain = new Spread();
        var flights = f.Needs("flights", Kinds.Count(2, 10_000, "A thousand tell a chance of one in a hundred."), "Number of flights.");
        var seed = f.Has("seed", Kinds.Count(0, int.MaxValue, "Any whole number."), 1, "Seed: the same gives the same flights.");
        var pressure = f.Has("fill pressure spread", Kinds.Percent(0, 20, Deviation), plain.Pressure, "Spread of the fill pressure.");
        var water = f.Has("water fraction spread", Kinds.Percent(0, 10, Deviation), plain.Water,
            "Spread of the water fraction, in points of it.");
        var thrust = f.Has("thrust spread", Kinds.Percent(0, 30, Deviation), plain.Thrust, "Spread of the thrust.");
        var wind = f.Has("wind speed spread", Kinds.Percent(0, 100, Deviation), plain.WindSpeed, "Spread of the wind's speed.");
        var direction = f.Has("wind direction spread", Kinds.Degrees(0, 180, Deviation), plain.WindDirection, "Spread of its direction.");
        var tilt = f.Has("rail tilt spread", Kinds.Degrees(0, 10, Deviation), plain.RailTilt, "Spread of the rail's tilt, each way.");
        var timer = f.Has("timer spread", Kinds.Seconds(0, 10, Deviation), plain.Timer, "Spread of timer or delay.");
        return v => new(flights(v), (ulong)seed(v), plain with
        {
            Pressure = pressure(v), Water = water(v), Thrust = thrust(v), WindSpeed = wind(v), WindDirection = direction(v),
            RailTilt = tilt(v), Timer = timer(v),
        });
    });

    private const string Deviation = "It is a standard deviation.";
}
