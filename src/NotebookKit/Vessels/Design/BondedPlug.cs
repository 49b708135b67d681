using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A plug glued into the vessel.</summary>
/// <param name="Adhesive">Adhesive.</param>
/// <param name="Overlap">Bonded length; 3 to 300 mm.</param>
/// <param name="VesselSurface">What it holds on to in the vessel.</param>
/// <param name="PlugSurface">What it holds on to on the plug.</param>
public sealed record BondedPlug(Adhesive Adhesive, Length Overlap, BondSurface VesselSurface, BondSurface PlugSurface) : EndJoint
{
    /// <summary>Thickness of the adhesive; 0.05 to 3 mm.</summary>
    public Length BondLine { get; init; } = 0.3.Millimetres();

    /// <summary>Wall of the plug's skirt inside the overlap; 0.2 to 100 mm.</summary>
    public Length SkirtWall { get; init; } = 3.Millimetres();

    /// <summary>Modulus of the plug; 0.1 to 250 GPa.</summary>
    public Pressure PlugModulus { get; init; } = 69.Gigapascals();

    /// <inheritdoc/>
    public override string Name => "bonded plug";

    /// <inheritdoc/>
    public override Length Reach => Overlap;

    /// <summary>Lap-shear strength on the weaker of the two surfaces.</summary>
    public Property<Pressure> CouponStrength => Adhesive.Weaker(VesselSurface, PlugSurface);

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. Adhesive.Validate()];
        Add(new ValidRange<Length>(3.Millimetres(), 300.Millimetres()).Find(Overlap, "overlap of the bonded plug",
            "Half to one bore is usual."));
        Add(new ValidRange<Length>(0.05.Millimetres(), 3.Millimetres()).Find(BondLine, "bond line of the plug", "0.1 to 0.5 mm is usual."));
        Add(new ValidRange<Length>(0.2.Millimetres(), 100.Millimetres()).Find(SkirtWall, "skirt wall of the plug", "2 to 5 mm is usual."));
        Add(new ValidRange<Pressure>(0.1.Gigapascals(), 250.Gigapascals()).Find(PlugModulus, "modulus of the plug",
            "Aluminium is 69 GPa."));
        Add(BondSurfaces.Find(VesselSurface, "vessel", Adhesive));
        Add(BondSurfaces.Find(PlugSurface, "plug", Adhesive));
        if (findings.All(f => f.Severity != FindingSeverity.Error)) findings.Add(VesselsFindings.BondLeavesLinerOut());
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }
}
