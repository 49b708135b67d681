using NotebookKit.Materials.Solids;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A flat round plate.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Wall">Its thickness; 0.1 to 100 mm.</param>
/// <remarks>Source: geometry.</remarks>
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
}
