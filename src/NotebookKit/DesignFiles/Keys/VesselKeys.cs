using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Materials.Solids;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>A vessel: liner, plies, ends, how it is made.</summary>
internal static class VesselKeys
{
    private const double IsTape = 0.9;

    private static readonly ObjectShape<Liner> LinerShape = new("liner", "The tube the plies are laid on.", f =>
    {
        var material = f.Part("material", Kinds.Solid, "What it is made of; left out where the mandrel was taken out.");
        var bore = f.Needs("bore", Kinds.Millimetres(5, 500, "Vessels here are 10 to 200 mm across."), "Inner diameter.");
        var wall = f.Has("wall", Kinds.Millimetres(0, 20, "A bottle wall is 0.3, a thin pipe 1 to 2 mm."), 0.Millimetres(), "Its wall.");
        return v => new Liner(material(v), bore(v), wall(v));
    });

    private static readonly EitherShape<IMaterial, Ply> PlyShape = new(
        new MaterialShape<IMaterial>("sleeve, cloth, tape or veil", m => m is Braid or Cloth or Veil),
        m => m switch
        {
            Braid braid => new BraidedSleeve(braid),
            Cloth cloth when cloth.WarpShare.DecimalFractions >= IsTape => new HoopWrap(cloth),
            Cloth cloth => new ClothWrap(cloth),
            _ => new VeilWrap((Veil)m),
        },
        new ChoiceShape<Ply>("ply", "kind",
            (["sleeve"], "A braided sleeve pulled over what lies beneath.", f =>
            {
                var braid = f.Needs("material", new MaterialShape<Braid>("sleeve"), "The sleeve.");
                return Fraction(f, v => new BraidedSleeve(braid(v)));
            }),
            (["hoop wrap"], "A tape wound round, layer on layer.", f =>
            {
                var tape = f.Needs("material", Kinds.Cloth, "The tape.");
                var layers = f.Has("layers", Kinds.Count(1, 50, "Count the layers."), 2, "Number of layers.");
                return Fraction(f, v => new HoopWrap(tape(v), layers(v)));
            }),
            (["cloth wrap"], "A cloth wrapped round in one piece.", f =>
            {
                var cloth = f.Needs("material", Kinds.Cloth, "The cloth.");
                var turns = f.Has("turns", Kinds.Count(1, 20, "Count the full turns."), 1, "Full turns.");
                var lay = f.Has("lay", new WordShape<ClothLay>("lay", ("warp axial", ClothLay.WarpAxial),
                    ("warp around", ClothLay.WarpAround), ("bias", ClothLay.Bias)), ClothLay.WarpAxial, "How it lies.");
                var overlap = f.Has("overlap", Kinds.Millimetres(0, 500, "25 mm is common practice."), 25.Millimetres(),
                    "Overlap past the full turns.");
                return Fraction(f, v => new ClothWrap(cloth(v), turns(v), lay(v)) { Overlap = overlap(v) });
            }),
            (["veil"], "A surfacing veil wrapped round.", f =>
            {
                var veil = f.Needs("material", new MaterialShape<Veil>("veil"), "The veil.");
                var turns = f.Has("turns", Kinds.Count(1, 10, "Count the full turns."), 1, "Full turns.");
                return Fraction(f, v => new VeilWrap(veil(v), turns(v)));
            })));

    private static readonly ObjectShape<Fabrication> FabricationShape = new("fabrication", "How well the vessel is made.", f =>
    {
        var hand = Fabrication.HandLaid;
        var share = Kinds.Percent(20, 110, "By hand 45 to 80 % is usual.");
        var efficiency = f.Has("efficiency", share, hand.Efficiency, "Share of the fibre's strength that arrives in the wall, mean.");
        var low = f.Has("efficiency low", share, hand.EfficiencyLow, "Low end of the efficiency: one in twenty is below.");
        var high = f.Has("efficiency high", share, hand.EfficiencyHigh, "High end of the efficiency: one in twenty is above.");
        var spread = f.Has("vessel spread", Kinds.Number(0, 0.4, "It is the coefficient of variation, 0.10 for 10 %."), hand.VesselSpread,
            "Scatter from one vessel to the next made the same way.");
        var fraction = f.Has("fibre fraction", Fibre, hand.FibreFraction, "Fibre volume fraction of the plies, mean.");
        var fractionSpread = f.Has("fibre fraction spread", Kinds.Percent(0, 15, "3 % is usual by hand."), hand.FibreFractionSpread,
            "Standard deviation of the fibre volume fraction.");
        var angle = f.Has("angle spread", Kinds.Degrees(0, 10, "1° to 2° is usual by hand."), hand.AngleSpread,
            "Standard deviation of a sleeve's angle.");
        var cracked = f.Has("cracked stiffness", Kinds.Percent(0.01, 100, "1 % is the usual choice."), hand.CrackedStiffness,
            "Share of its stiffness across that a ply keeps when its resin has cracked.");
        var liner = f.Has("counts liner", Kinds.Flag, hand.CountsLiner, "Whether the liner's share of the load is counted.");
        var built = f.Part("as built", TextShape.Prose, "What of it was measured on a vessel that was built.");
        return v => new Fabrication
        {
            Efficiency = efficiency(v), EfficiencyLow = low(v), EfficiencyHigh = high(v), VesselSpread = spread(v),
            FibreFraction = fraction(v), FibreFractionSpread = fractionSpread(v), AngleSpread = angle(v), CrackedStiffness = cracked(v),
            CountsLiner = liner(v), AsBuilt = built(v),
        };
    });

    /// <summary>A vessel; what it makes takes the vessel's name where it has none of its own.</summary>
    public static ObjectShape<Func<string, PressureVessel>> Vessel { get; } = new("vessel",
        "The pressure vessel as it is built: a liner, plies from the inside out, two ends.", f =>
        {
            var own = f.Part("name", TextShape.Name, "Its name; the design's or the stage's unless given.");
            var liner = f.Needs("liner", LinerShape, "Tube the plies are laid on.");
            var length = f.Needs("length", Kinds.Millimetres(10, 5000, "Measure between the closures."),
                "Straight length inside, between the closures.");
            var resin = f.Needs("resin", Kinds.Resin, "Resin of every ply.");
            var plies = f.Needs("plies", Kinds.List(PlyShape, 0, 40),
                "Plies from the inside out; a name alone is a sleeve, a veil or a cloth of one turn, or a hoop wrap of two layers.");
            var nozzle = f.Needs("nozzle end", EndKeys.End, "The end with the nozzle.");
            var forward = f.Needs("forward end", EndKeys.End, "The end towards the nose.");
            var fabrication = f.Part("fabrication", FabricationShape, "How well it is made; by hand unless given.");
            return v =>
            {
                var bore = liner(v).Bore;
                var whole = new PressureVessel("vessel", liner(v), length(v), resin(v), plies(v), nozzle(v)(bore), forward(v)(bore))
                {
                    Fabrication = fabrication(v) ?? Fabrication.HandLaid,
                };
                return name => whole with { Name = own(v) ?? name };
            };
        });

    private static UnitShape<Ratio> Fibre => Kinds.Percent(5, 78.5, "By hand 30 to 45 % is usual.");

    private static Func<Values, Ply> Fraction(FieldList f, Func<Values, Ply> make)
    {
        var fraction = f.May("fibre fraction", Fibre, "Its fibre volume fraction where it differs from the vessel's.");
        return v => make(v) with { FibreFraction = fraction(v) };
    }
}
