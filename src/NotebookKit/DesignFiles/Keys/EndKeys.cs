using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>Ends of a vessel: closure, fitting, seal, joints.</summary>
internal static class EndKeys
{
    private static readonly UnitShape<Length> Wall = Kinds.Millimetres(0.1, 100, "Turned closures are 3 to 10 mm.");
    private static readonly UnitShape<Length> Opening = Kinds.Millimetres(0, 475, "A hole has to leave a rim inside the bore.");
    private static readonly UnitShape<Length> Overlap = Kinds.Millimetres(1, 300, "Half to one bore is usual.");
    private static readonly UnitShape<Length> Thread = Kinds.Millimetres(2, 500, "Measure the thread.");
    private static readonly UnitShape<Length> Engagement = Kinds.Millimetres(1, 200, "Three turns at the least.");
    private static readonly UnitShape<Length> Pitch = Kinds.Millimetres(0.3, 8, "Measure over ten turns.");
    private static readonly UnitShape<Length> BondLine = Kinds.Millimetres(0.05, 3, "0.1 to 0.5 mm is usual.");

    private static readonly ObjectShape<Seal> SealShape = new("seal", "A seal, and what it is known to hold.", f =>
    {
        var kind = f.Needs("kind", new WordShape<SealKind>("kind of seal", ("O-ring", SealKind.ORing), ("bonded", SealKind.Bonded),
            ("tape", SealKind.Tape)), "What seals.");
        var holds = f.May("holds to", Kinds.BarGauge(0.5, 2000, "Give what its maker or a test says, or leave it out."),
            "Pressure that it is known to hold, by its maker or by a test.");
        return v => new Seal(kind(v)) { HoldsTo = holds(v) };
    });

    public static ObjectShape<CapDiscs> Discs { get; } = new("cap discs", "Round pieces of cloth, each turned against the one beneath.",
        f =>
    {
        var cloth = f.Needs("cloth", Kinds.Cloth, "The cloth; a balanced one.");
        var count = f.Needs("count", Kinds.Count(1, 40, "Count the discs."), "How many.");
        var lap = f.Has("lap", Kinds.Millimetres(0, 500, "25 mm is common practice."), 25.Millimetres(),
            "How far they reach on to the wall.");
        var fraction = f.Has("fibre fraction", Fibre, 40.Percent(), "Fibre volume fraction.");
        return v => new CapDiscs(cloth(v), count(v)) { Lap = lap(v), FibreFraction = fraction(v) };
    });

    private static readonly ChoiceShape<Func<Length, Closure>> ClosureShape = new("closure", "kind",
        (["flat"], "A flat plate.", f => Plain(f, (material, wall, _) => new FlatClosure(material, wall))),
        (["hemisphere"], "Half a sphere for the bore.", f => Plain(f, DomedClosure.Hemisphere)),
        (["2:1 ellipsoid"], "A dome whose depth is a quarter of the bore.", f => Plain(f, DomedClosure.Ellipsoid)),
        (["dome"], "A dome of a depth.", f => Plain(f, "depth", Kinds.Millimetres(1, 500, "A fifth of the bore up to the bore."),
            "Inside depth.", (material, wall, depth) => new DomedClosure(material, wall, depth))),
        (["cone"], "A cone that narrows from the bore to its opening.", f => Plain(f, "half angle",
            Kinds.Degrees(5, 30, "A blunter cone bends its wide end; use a dome."), "Angle between side and axis.",
            (material, wall, angle) => new ConicalClosure(material, wall, angle))),
        (["moulded dome"], "A dome moulded of cloth discs.", f =>
        {
            var depth = f.Needs("depth", Kinds.Millimetres(1, 500, "A fifth of the bore up to the bore."), "Inside depth.");
            var discs = f.Needs("discs", Discs, "Discs that it is moulded of.");
            var resin = f.Needs("resin", Kinds.Resin, "Resin of the discs.");
            var opening = f.Has("opening", Opening, 0.Millimetres(), "Hole through its middle.");
            return v => _ => DomedClosure.Moulded(discs(v), resin(v), depth(v)) with { Opening = opening(v) };
        }));

    private static readonly ChoiceShape<Fitting> FittingShape = new("fitting", "kind",
        (["threaded"], "A fitting screwed into the closure or into a boss of it.", f =>
        {
            var material = f.Needs("material", Kinds.Solid, "What the fitting is made of.");
            var nominal = f.Needs("thread", Thread, "Nominal diameter of the thread.");
            var pitch = f.Needs("pitch", Pitch, "Pitch of the thread.");
            var engagement = f.Needs("engagement", Engagement, "Length over which full threads engage.");
            var boss = f.May("boss", Thread, "Outer diameter of a boss around the thread.");
            return Common(f, v => new ThreadedFitting(material(v), nominal(v), pitch(v), engagement(v)) { Boss = boss(v) });
        }),
        (["bonded"], "A fitting glued into the opening.", f =>
        {
            var adhesive = f.Needs("adhesive", Kinds.Adhesive, "Adhesive.");
            var overlap = f.Needs("overlap", Overlap, "Bonded length.");
            var closure = f.Needs("closure surface", Kinds.Surface, "What it holds on to in the closure.");
            var own = f.Needs("fitting surface", Kinds.Surface, "What it holds on to on the fitting.");
            var line = f.Has("bond line", BondLine, 0.2.Millimetres(), "Thickness of the adhesive.");
            var wall = f.Has("wall", Kinds.Millimetres(0.2, 100, "2 to 5 mm is usual."), 2.Millimetres(), "Wall inside the overlap.");
            var modulus = f.Has("modulus", Kinds.Gigapascals(0.1, 250, "Aluminium is 69 GPa."), 69.Gigapascals(),
                "Modulus of the fitting.");
            return Common(f, v => new BondedFitting(adhesive(v), overlap(v), closure(v), own(v))
            {
                BondLine = line(v), Wall = wall(v), Modulus = modulus(v),
            });
        }),
        (["clamped"], "A fitting with a flange inside, drawn tight by a nut outside.", f =>
        {
            var material = f.Needs("material", Kinds.Solid, "What fitting and nut are made of, the weaker of both.");
            var nominal = f.Needs("thread", Thread, "Nominal diameter of the thread.");
            var pitch = f.Needs("pitch", Pitch, "Pitch of the thread.");
            var height = f.Needs("nut height", Engagement, "Length over which nut and fitting engage.");
            var flange = f.Needs("flange", Kinds.Millimetres(0.5, 100, "2 to 6 mm is usual."), "Thickness of the flange.");
            var diameter = f.Needs("flange diameter", Thread, "Outer diameter of the flange.");
            var inside = f.Has("flange inside", Kinds.Flag, true, "Whether the flange lies inside.");
            return Common(f, v => new ClampedFitting(material(v), nominal(v), pitch(v), height(v), flange(v), diameter(v))
            {
                FlangeInside = inside(v),
            });
        }),
        (["shouldered"], "A fitting put in from inside whose shoulder bears on the closure.", f =>
        {
            var material = f.Needs("material", Kinds.Solid, "What the fitting is made of.");
            var shoulder = f.Needs("shoulder", Kinds.Millimetres(0.5, 100, "2 to 6 mm is usual."), "Thickness of the shoulder.");
            var diameter = f.Needs("shoulder diameter", Thread, "Outer diameter of the shoulder.");
            return Common(f, v => new ShoulderedFitting(material(v), shoulder(v), diameter(v)));
        }));

    private static readonly ChoiceShape<EndJoint> JointShape = new("joint", "kind",
        (["carried sleeve"], "The sleeves are carried over the closure and hold it in.", f =>
        {
            var delivers = f.Has("delivers", Kinds.Percent(30, 100, "85 % is assumed; a sharp edge takes more away."), 85.Percent(),
                "Share of the straight part's strength that yarns deliver over the closure's edge.");
            var friction = f.Has("friction", Kinds.Number(0, 1, "Dry fibres on plastic or metal are 0.15 to 0.35."), 0.15,
                "Friction of the yarns on the closure.");
            var turn = f.Has("turn", Kinds.Degrees(0, 180, "A dome turns 90°."), 90.Degrees(),
                "Angle that the surface turns through beneath the sleeve.");
            var edge = f.May("edge radius", Kinds.Millimetres(0.1, 500, "5 mm or more is usual."),
                "Radius of the edge it is carried over.");
            var neck = f.May("neck", Kinds.Millimetres(2, 500, "Measure over what the sleeve ends on."),
                "Diameter of the neck it ends on.");
            var tail = f.May("tail", Kinds.Millimetres(1, 500, "Two neck diameters are usual."), "Length bonded past the closure.");
            var tied = f.Has("tied off", Kinds.Flag, false, "Whether the tail is tied off with turns of yarn.");
            return v => new CarriedSleeve
            {
                Delivers = delivers(v), Friction = friction(v), Turn = turn(v), EdgeRadius = edge(v), Neck = neck(v), Tail = tail(v),
                IsTiedOff = tied(v),
            };
        }),
        (["bonded plug"], "A plug glued into the vessel.", f =>
        {
            var adhesive = f.Needs("adhesive", Kinds.Adhesive, "Adhesive.");
            var overlap = f.Needs("overlap", Overlap, "Bonded length.");
            var vessel = f.Needs("vessel surface", Kinds.Surface, "What it holds on to in the vessel.");
            var plug = f.Needs("plug surface", Kinds.Surface, "What it holds on to on the plug.");
            var line = f.Has("bond line", BondLine, 0.3.Millimetres(), "Thickness of the adhesive.");
            var skirt = f.Has("skirt wall", Kinds.Millimetres(0.2, 100, "2 to 5 mm is usual."), 3.Millimetres(),
                "Wall of the plug's skirt inside the overlap.");
            var modulus = f.Has("plug modulus", Kinds.Gigapascals(0.1, 250, "Aluminium is 69 GPa."), 69.Gigapascals(),
                "Modulus of the plug.");
            return v => new BondedPlug(adhesive(v), overlap(v), vessel(v), plug(v))
            {
                BondLine = line(v), SkirtWall = skirt(v), PlugModulus = modulus(v),
            };
        }),
        (["threaded boss"], "A closure screwed into a threaded ring.", f =>
        {
            var material = f.Needs("material", Kinds.Solid, "The weaker of the two threads' materials.");
            var diameter = f.Needs("pitch diameter", Thread, "Pitch diameter of the thread.");
            var engagement = f.Needs("engagement", Engagement, "Length of thread that engages.");
            return v => new ThreadedBoss(material(v), diameter(v), engagement(v));
        }));

    public static ObjectShape<Func<Length, VesselEnd>> End { get; } = new("end",
        "One end of a vessel: what closes it, what fills its opening, what seals it and what holds it in.", f =>
        {
            var closure = f.Needs("closure", ClosureShape, "What closes it.");
            var joints = f.Needs("joints", Kinds.List(JointShape, 0, 6), "What holds it in, all in a row.");
            var fitting = f.Part("fitting", FittingShape, "What fills the closure's opening.");
            var seal = f.Part("seal", SealShape, "What seals the closure in the vessel.");
            var discs = f.Part("discs", Discs, "Cloth discs laid over the closure.");
            var extra = f.Has("other parts", Kinds.Grams(0, 20_000, "Weigh them."), 0.Grams(),
                "Mass of fittings, seals and fillers that the model doesn't know.");
            var weighed = f.May("weighed", Kinds.Grams(0, 50_000, "Weigh the whole end."), "Whole mass of the end as weighed.");
            return v => bore => new VesselEnd(closure(v)(bore), joints(v))
            {
                Fitting = fitting(v), Seal = seal(v), Discs = discs(v), Fittings = extra(v), Weighed = weighed(v),
            };
        });

    private static UnitShape<Ratio> Fibre => Kinds.Percent(5, 78.5, "By hand 30 to 45 % is usual.");

    private static Func<Values, Func<Length, Closure>> Plain(FieldList f,
        Func<Materials.Solids.IsotropicMaterial, Length, Length, Closure> make)
    {
        var material = f.Needs("material", Kinds.Solid, "What it is made of.");
        var wall = f.Needs("wall", Wall, "Its wall.");
        var opening = f.Has("opening", Opening, 0.Millimetres(), "Hole through its middle: nozzle or filling port.");
        return v => bore => make(material(v), wall(v), bore) with { Opening = opening(v) };
    }

    private static Func<Values, Func<Length, Closure>> Plain<T>(FieldList f, string key, ScalarShape<T> shape, string about,
        Func<Materials.Solids.IsotropicMaterial, Length, T, Closure> make)
    {
        var material = f.Needs("material", Kinds.Solid, "What it is made of.");
        var wall = f.Needs("wall", Wall, "Its wall.");
        var own = f.Needs(key, shape, about);
        var opening = f.Has("opening", Opening, 0.Millimetres(), "Hole through its middle: nozzle or filling port.");
        return v => _ => make(material(v), wall(v), own(v)) with { Opening = opening(v) };
    }

    private static Func<Values, Fitting> Common(FieldList f, Func<Values, Fitting> make)
    {
        var seal = f.Part("seal", SealShape, "What seals it in the closure.");
        var mass = f.Has("mass", Kinds.Grams(0, 20_000, "Weigh the fitting."), 0.Grams(), "Its mass.");
        return v => make(v) with { Seal = seal(v), Mass = mass(v) };
    }
}
