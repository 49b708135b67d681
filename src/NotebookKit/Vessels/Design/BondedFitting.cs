using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A fitting glued into the opening.</summary>
/// <param name="Adhesive">Adhesive.</param>
/// <param name="Overlap">Bonded length; 1 to 200 mm.</param>
/// <param name="ClosureSurface">What it holds on to in the closure.</param>
/// <param name="FittingSurface">What it holds on to on the fitting.</param>
public sealed record BondedFitting(Adhesive Adhesive, Length Overlap, BondSurface ClosureSurface, BondSurface FittingSurface) : Fitting
{
    /// <summary>Thickness of the adhesive; 0.05 to 3 mm.</summary>
    public Length BondLine { get; init; } = 0.2.Millimetres();

    /// <summary>Wall of the fitting inside the overlap; 0.2 to 100 mm.</summary>
    public Length Wall { get; init; } = 2.Millimetres();

    /// <summary>Modulus of the fitting; 0.1 to 250 GPa.</summary>
    public Pressure Modulus { get; init; } = 69.Gigapascals();

    /// <inheritdoc/>
    public override string Name => "bonded fitting";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Closure closure)
    {
        List<Finding> findings = [.. base.Validate(closure), .. Adhesive.Validate()];
        Add(findings,
            new ValidRange<Length>(1.Millimetres(), 200.Millimetres()).Find(Overlap, "overlap of the bonded fitting",
                "A bond without an overlap holds nothing; a boss gives it length."),
            new ValidRange<Length>(0.05.Millimetres(), 3.Millimetres()).Find(BondLine, "bond line of the fitting",
                "0.1 to 0.5 mm is usual."),
            new ValidRange<Length>(0.2.Millimetres(), 100.Millimetres()).Find(Wall, "wall of the fitting", "2 to 5 mm is usual."),
            new ValidRange<Pressure>(0.1.Gigapascals(), 250.Gigapascals()).Find(Modulus, "modulus of the fitting",
                "Aluminium is 69 GPa."),
            Overlap > closure.Wall ? VesselsFindings.OverlapPastWall(Overlap, closure.Wall) : null,
            BondSurfaces.Find(ClosureSurface, "closure", Adhesive),
            BondSurfaces.Find(FittingSurface, "fitting", Adhesive));
        return findings;
    }

    /// <summary>Lap-shear strength on the weaker of the two surfaces.</summary>
    public Property<Pressure> CouponStrength => Adhesive.Weaker(ClosureSurface, FittingSurface);
}
