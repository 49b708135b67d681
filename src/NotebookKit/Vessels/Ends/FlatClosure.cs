using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>A flat round plate, taken as held at its rim without being clamped, which errs low.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Wall">Its thickness; 0.1 to 100 mm.</param>
/// <remarks>
/// σ = 3(3 + ν)/8·p·r²/t² at the middle. A hole at the middle raises the stress at its edge to about twice that of the whole plate.
/// Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, §16, §17.
/// </remarks>
public sealed record FlatClosure(IsotropicMaterial Material, Length Wall) : Closure(Material, Wall)
{
    /// <inheritdoc/>
    public override string Shape => "flat closure";

    /// <inheritdoc/>
    public override Volume VolumeInside(Length bore) => Volume.FromLiters(0);

    /// <inheritdoc/>
    public override Volume Solid(Length bore) =>
        Volume.FromCubicMeters(Math.PI / 4 * (bore.Meters * bore.Meters - Opening.Meters * Opening.Meters) * Wall.Meters);

    /// <inheritdoc/>
    public override Length DepthInside(Length bore) => Length.FromMillimeters(0);

    /// <inheritdoc/>
    public override Length Meridian(Length bore) => bore / 2;

    /// <inheritdoc/>
    public override GaugePressure YieldPressure(Length bore)
    {
        var ratio = Wall.Meters / (bore.Meters / 2);
        return GaugePressure.FromPascals(Material.YieldStrength.Value.Pascals * 8 / (3 * (3 + Material.PoissonRatio.Value)) * ratio * ratio / HoleFactor);
    }

    internal override (string Formula, Source Source) YieldFormula => (
        Opening.Meters > 0 ? @"p = \frac{1}{2}\,\frac{8}{3\,(3+\nu)}\,\sigma_y\left(\frac{t}{r}\right)^2" : @"p = \frac{8}{3\,(3+\nu)}\,\sigma_y\left(\frac{t}{r}\right)^2",
        VesselSources.Plates);

    /// <summary>A small hole at the middle of a plate in even bending doubles the stress at its edge. Source: Timoshenko and Woinowsky-Krieger, §17.</summary>
    private double HoleFactor => Opening.Meters > 0 ? 2 : 1;
}
