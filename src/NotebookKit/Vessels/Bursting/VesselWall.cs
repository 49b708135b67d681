using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;

namespace NotebookKit.Vessels.Bursting;

/// <summary>The load-carrying wall of a vessel as plain SI numbers, ready to be broken many times over.</summary>
internal sealed class VesselWall
{
    private readonly LayerSeed[] _seeds;
    private readonly LinerLayer _liner;
    private readonly double _residual, _resinShear, _efficiency, _linerGive;
    private double _leastNeck;

    public VesselWall(Layup layup)
        : this(layup, Bearing(layup), [])
    {
        foreach (var ply in layup.Plies)
            if (ply.Fit?.FreeDiameters is { } free) _leastNeck = Math.Max(_leastNeck, free.Smallest.Meters);
        var bearing = Plies;
        if (bearing.Count < 2) return;
        var groups = LeftOffPlies.Groups(layup, bearing);
        Inner = [.. LeftOffPlies.Orders(groups.Max() + 1).Select(kept =>
            new VesselWall(layup, [.. bearing.Where((_, i) => LeftOffPlies.Keeps(kept, groups, i))], _seeds) { _leastNeck = _leastNeck })];
    }

    private VesselWall(Layup layup, List<int> plies, LayerSeed[] known)
    {
        var vessel = layup.Vessel;
        Plies = plies;
        var seeds = new List<LayerSeed>(2 * plies.Count);
        double inner = double.NaN, outer = double.NaN, thickness = 0;
        foreach (var i in plies)
        {
            var ply = layup.Plies[i];
            if (double.IsNaN(inner)) inner = ply.InnerDiameter.Meters;
            outer = ply.OuterDiameter.Meters;
            thickness += ply.Thickness.Meters;
            if (known.Length == 0) AddSeeds(seeds, ply, i, vessel);
            foreach (ref readonly var seed in known.AsSpan())
                if (seed.Ply == i) seeds.Add(seed);
        }

        _seeds = [.. seeds];
        var liner = vessel.Liner;
        if (double.IsNaN(inner)) (inner, outer) = (liner.Bore.Meters, liner.OuterDiameter.Meters);
        InnerRadius = inner / 2;
        OuterRadius = outer / 2;
        // The liner hands the pressure on to the plies: the middle of the plies errs on the low side of every burst.
        Radius = (inner + outer) / 4;
        Thickness = thickness;
        _resinShear = vessel.Resin.ShearStrength.Value.Pascals;
        _efficiency = vessel.Fabrication.Efficiency.DecimalFractions;
        _residual = vessel.Fabrication.CrackedStiffness.DecimalFractions;
        _liner = liner.Material is { } m && (vessel.Fabrication.CountsLiner || _seeds.Length == 0)
            ? new LinerLayer(m.Modulus.Value.Pascals, m.PoissonRatio.Value, m.YieldStrength.Value.Pascals,
                m.UsableStrain.Value.DecimalFractions, liner.Wall.Meters)
            : default;
        MetalLinerForce = liner.Material is { IsMetal: true } ? _liner.YieldStrength * _liner.Thickness : 0;
        LeansOnPlastic = _seeds.Length > 0 && _liner.Thickness > 0 && liner.Material is { IsMetal: false };
        Bore = liner.Bore.Meters;
        // Held from all sides it gives less than a free one: E(1 − ν)/((1 + ν)(1 − 2ν)) in the place of E.
        _linerGive = liner.Material is { } between && between.PoissonRatio.Value is var nu
            ? liner.Wall.Meters * (1 + nu) * (1 - 2 * nu) / ((1 - nu) * between.Modulus.Value.Pascals) : 0;
        LinerStiffness = liner.Material is { } material ? material.Modulus.Value.Pascals * liner.Wall.Meters : 0;
    }

    /// <summary>
    /// The same wall with any of its plies counted as carrying nothing, lying where they lie; the fewest first, the outermost first of as
    /// many, at least one ply that carries load in each.
    /// </summary>
    public IReadOnlyList<VesselWall> Inner { get; private init; } = [];

    /// <summary>The plies that carry load, by their place in the layup.</summary>
    public IReadOnlyList<int> Plies { get; }

    /// <summary>The same with only those of its inner walls that are worth following.</summary>
    public VesselWall Keeping(Func<VesselWall, bool> worth) => new(this) { Inner = [.. Inner.Where(worth)] };

    private VesselWall(VesselWall other)
    {
        Plies = other.Plies;
        (_seeds, _liner, _residual, _resinShear, _efficiency, _linerGive, _leastNeck) = (other._seeds, other._liner, other._residual,
            other._resinShear, other._efficiency, other._linerGive, other._leastNeck);
        (Radius, InnerRadius, OuterRadius, Thickness, Bore) =
            (other.Radius, other.InnerRadius, other.OuterRadius, other.Thickness, other.Bore);
        (MetalLinerForce, LinerStiffness, LeansOnPlastic) = (other.MetalLinerForce, other.LinerStiffness, other.LeansOnPlastic);
    }

    private static List<int> Bearing(Layup layup) => [.. Enumerable.Range(0, layup.Plies.Count).Where(i => layup.Plies[i].CarriesLoad)];

    /// <summary>How many families of fibres there are.</summary>
    public int Count => _seeds.Length;

    /// <summary>Radius at which pressure loads the wall [m].</summary>
    public double Radius { get; }

    /// <summary>Radius under and over the load-carrying plies [m].</summary>
    public double InnerRadius { get; }

    /// <inheritdoc cref="InnerRadius"/>
    public double OuterRadius { get; }

    /// <summary>Thickness of the load-carrying plies [m].</summary>
    public double Thickness { get; }

    /// <summary>Inner diameter [m].</summary>
    public double Bore { get; }

    /// <summary>Yield strength times wall of a metal liner that is counted on; 0 for a plastic one [N/m].</summary>
    public double MetalLinerForce { get; }

    /// <summary>E·t of the liner, counted on or not [N/m].</summary>
    public double LinerStiffness { get; }

    /// <summary>The liner as it is counted on.</summary>
    public LinerLayer Liner => _liner;

    /// <summary>Whether plies share the load with a plastic liner, which gives way slowly under a held load.</summary>
    public bool LeansOnPlastic { get; }

    public WallEngine NewEngine() => new(Math.Max(Count, 1));

    /// <summary>Puts the wall with a sample's factors into an engine.</summary>
    public void Set(WallEngine engine, in LayerFactors factors, FailureCriterion criterion, double linerFactor = 1) =>
        Set(engine, factors, criterion, _liner with { YieldStrength = _liner.YieldStrength * linerFactor });

    /// <summary>The same as if the liner only kept the water in.</summary>
    public void SetWithoutLiner(WallEngine engine, in LayerFactors factors, FailureCriterion criterion)
        => Set(engine, factors, criterion, default(LinerLayer));

    private void Set(WallEngine engine, in LayerFactors factors, FailureCriterion criterion, in LinerLayer liner)
    {
        Span<WallLayer> layers = stackalloc WallLayer[Count];
        for (var i = 0; i < Count; i++) layers[i] = _seeds[i].Grow(factors);
        engine.Set(layers, liner, WallLoad.ClosedTube, criterion, _residual);
    }

    /// <summary>What the ends need to know of the wall.</summary>
    public EndContext Context(ReadOnlySpan<WallLayer> layers)
    {
        double stiffness = LinerStiffness, sleeveStiffness = 0;
        // Force a width for a strain along, around and both, the liner's own first.
        double along = LinerStiffness, around = LinerStiffness, both = 0;
        for (var i = 0; i < layers.Length; i++)
        {
            ref readonly var l = ref layers[i];
            var c = Math.Cos(l.Angle);
            // Modulus of the family along the axis, plane stress: enough for the shear lag of a bond.
            var q = PlaneStiffness.Of(l.E1, l.E2, l.G12, l.Nu12).Rotated(l.Angle);
            stiffness += q.S11 * l.Thickness;
            (along, around, both) = (along + q.S11 * l.Thickness, around + q.S22 * l.Thickness, both + q.S12 * l.Thickness);
            if (!_seeds[i].IsSleeve) continue;
            sleeveStiffness += l.E1 * c * c * c * c * l.Thickness;
        }

        // Half of the growth of the volume a pressure, which never rises with what is laid over it.
        var determinant = along * around - both * both;
        var growth = determinant > 0 ? InnerRadius * InnerRadius * (along - both + around / 4) / determinant : 0;
        return new EndContext(Bore, stiffness, SleevePascals(layers), sleeveStiffness, growth, _resinShear, _efficiency)
        {
            LinerGive = _linerGive,
            LeastNeck = _leastNeck,
        };
    }

    /// <summary>Pressure that the sleeves' yarns hold along the axis, all at their strength, over a closure [Pa].</summary>
    public double SleevePascals(ReadOnlySpan<WallLayer> layers)
    {
        var sum = 0.0;
        for (var i = 0; i < layers.Length; i++)
        {
            if (!_seeds[i].IsSleeve) continue;
            var c = Math.Cos(layers[i].Angle);
            sum += layers[i].NettingStrength * layers[i].Thickness * c * c / _seeds[i].Radius;
        }

        return 2 * sum;
    }

    private static void AddSeeds(List<LayerSeed> seeds, PlyGeometry ply, int index, PressureVessel vessel)
    {
        if (LayupModel.FibreOf(ply.Ply) is not { } fibre) return;
        var fraction = ply.FibreFraction.DecimalFractions;
        var solid = ply.Thickness.Meters * fraction;
        switch (ply.Ply)
        {
            case ClothWrap { Lay: not ClothLay.Bias } wrap:
                var warp = wrap.Cloth.WarpShare.DecimalFractions;
                var along = wrap.Lay == ClothLay.WarpAxial ? warp : 1 - warp;
                if (along > 0) Add(0, along);
                if (along < 1) Add(Math.PI / 2, 1 - along);
                break;
            default:
                Add(ply.Angle?.Radians ?? 0, 1);
                break;
        }

        void Add(double angle, double share) =>
            seeds.Add(new LayerSeed(fibre, vessel.Resin, fraction, angle, solid * share, index, ply.Ply is BraidedSleeve,
                (ply.InnerDiameter.Meters + ply.OuterDiameter.Meters) / 4));
    }
}
