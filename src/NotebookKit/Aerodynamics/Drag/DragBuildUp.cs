using NotebookKit.Aerodynamics.Fins;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>The build-up of drag in SI numbers, without allocation, at one end of the transition band.</summary>
internal readonly struct DragBuildUp
{
    /// <summary>Below this Reynolds number the plate laws lose their meaning and the drag no longer matters.</summary>
    private const double LowestReynolds = 1e4;

    /// <summary>What M² takes off friction, as a share: Barrowman, 1967, ch. 4 (unverified).</summary>
    public const double FrictionFall = 0.1;

    public DragBuildUp(DragGeometry geometry, DragAssumptions assumptions, double mach, double reynoldsPerMetre, double jetM2, bool late)
    {
        var transition = late ? assumptions.LateTransition : assumptions.EarlyTransition;
        var compressibility = assumptions.CompressibleFriction ? 1 - (FrictionFall * mach * mach) : 1;
        var reference = geometry.ReferenceM2;

        BodyFriction = compressibility * geometry.BodyForm * geometry.WettedM2 / reference
            * Aerodynamics.Drag.Friction.MixedCore(Math.Max(LowestReynolds, reynoldsPerMetre * geometry.LengthM), transition,
                geometry.Rough);
        BodyPressure = 0.8 * geometry.ConeM2 / reference;
        BoatTail = PressureDrag.BaseByMachCore(mach) * geometry.BoatTailM2 / reference;

        (BaseByFriction, BaseByMach) = Bases(BodyFriction, geometry, mach, jetM2);

        double friction = 0, leading = 0, sharp = 0, trailing = 0, junction = 0;
        foreach (ref readonly var fin in geometry.Fins)
        {
            friction += compressibility * fin.Form * fin.WettedM2
                * Aerodynamics.Drag.Friction.MixedCore(Math.Max(LowestReynolds, reynoldsPerMetre * fin.MeanChordM), transition, fin.Rough);
            var edge = fin.EdgeM2 * fin.LeadSweepSquare * PressureDrag.LeadingEdgeCore(fin.Leading, mach);
            if (fin.Leading == FinEdge.Sharp) sharp += edge;
            else leading += edge;
            trailing += fin.EdgeM2 * PressureDrag.TrailingEdgeCore(fin.Trailing, mach);
            junction += fin.JunctionM2;
        }

        FinFriction = friction / reference;
        FinLeading = leading / reference;
        SharpLeading = sharp / reference;
        FinTrailing = trailing / reference;
        FinJunction = junction / reference;
    }

    /// <summary>The same with another area of the base open to the air: only its base is another one.</summary>
    private DragBuildUp(in DragBuildUp other, DragGeometry geometry, double mach, double jetM2)
    {
        this = other;
        (BaseByFriction, BaseByMach) = Bases(BodyFriction, geometry, mach, jetM2);
    }

    public double BodyFriction { get; }

    public double BodyPressure { get; }

    public double BoatTail { get; }

    public double BaseByFriction { get; }

    public double BaseByMach { get; }

    public double FinFriction { get; }

    public double FinLeading { get; }

    /// <summary>What sharp leading edges would have were they rounded: the high end, the low end being nothing.</summary>
    public double SharpLeading { get; }

    public double FinTrailing { get; }

    public double FinJunction { get; }

    public double LowerBase => Math.Min(BaseByFriction, BaseByMach);

    public double UpperBase => Math.Max(BaseByFriction, BaseByMach);

    public double Friction => BodyFriction + FinFriction;

    /// <summary>Everything but base, boat-tail and sharp leading edges, which carry their own band.</summary>
    public double Attached => BodyFriction + BodyPressure + FinFriction + FinLeading + FinTrailing + FinJunction;

    /// <summary>The same while a jet fills another area of the base.</summary>
    public DragBuildUp WithJet(DragGeometry geometry, double mach, double jetM2) => new(this, geometry, mach, jetM2);

    private static (double ByFriction, double ByMach) Bases(double bodyFriction, DragGeometry geometry, double mach, double jetM2)
    {
        var reference = geometry.ReferenceM2;
        var openBase = Math.Max(0, geometry.BaseM2 - jetM2) / reference;
        return (openBase * 0.029 / Math.Sqrt(Math.Max(0.01, bodyFriction * reference / geometry.BaseM2)),
            openBase * PressureDrag.BaseByMachCore(mach));
    }

    /// <summary>Low end of the band, from the build-up with late transition and the one with early.</summary>
    public static double Low(in DragBuildUp late, in DragBuildUp early, double protuberance) =>
        Math.Min(late.Attached, early.Attached) + Math.Min(late.LowerBase, early.LowerBase) + protuberance;

    /// <summary>High end of the band, from the build-up with late transition and the one with early.</summary>
    public static double High(in DragBuildUp late, in DragBuildUp early, double protuberance) =>
        Math.Max(late.Attached, early.Attached) + Math.Max(late.UpperBase, early.UpperBase) + early.BoatTail + early.SharpLeading
            + protuberance;
}
