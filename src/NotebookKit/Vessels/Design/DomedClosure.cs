using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A dome, convex outwards: a hemisphere, or an ellipsoid of less depth.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Wall">Its wall; 0.1 to 100 mm.</param>
/// <param name="Depth">Inside depth; from a fifth of the bore, that of a hemisphere being half of it, up to the bore.</param>
/// <remarks>Source: geometry.</remarks>
public sealed record DomedClosure(IsotropicMaterial Material, Length Wall, Length Depth) : Closure(Material, Wall)
{
    /// <summary>A hemisphere for a bore.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="wall">Its wall; 0.1 to 100 mm.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public static DomedClosure Hemisphere(IsotropicMaterial material, Length wall, Length bore) => new(material, wall, bore / 2);

    /// <summary>A 2:1 ellipsoid for a bore.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="wall">Its wall; 0.1 to 100 mm.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public static DomedClosure Ellipsoid(IsotropicMaterial material, Length wall, Length bore) => new(material, wall, bore / 4);

    /// <inheritdoc/>
    public override string Shape => "domed closure";

    /// <inheritdoc/>
    public override Volume VolumeInside(Length bore) => Volume.FromCubicMeters(2.0 / 3 * Math.PI * bore.Meters * bore.Meters / 4 *
        Depth.Meters);

    /// <inheritdoc/>
    public override Volume Solid(Length bore)
    {
        // Between two half ellipsoids, less the hole.
        double a = bore.Meters / 2, b = Depth.Meters, t = Wall.Meters, hole = Opening.Meters / 2;
        var shell = 2.0 / 3 * Math.PI * ((a + t) * (a + t) * (b + t) - a * a * b);
        return Volume.FromCubicMeters(shell - Math.PI * hole * hole * t);
    }

    /// <inheritdoc/>
    public override Length DepthInside(Length bore) => Depth;

    /// <inheritdoc/>
    public override Length Meridian(Length bore)
    {
        // A quarter of an ellipse by Ramanujan's second approximation.
        double a = bore.Meters / 2, b = Depth.Meters;
        var h = (a - b) * (a - b) / ((a + b) * (a + b));
        return Length.FromMeters(Math.PI / 4 * (a + b) * (1 + 3 * h / (10 + Math.Sqrt(4 - 3 * h))));
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. base.Validate(bore)];
        if (new ValidRange<Length>(bore / 5, bore).Find(Depth, "depth of the dome",
            "Flatter ones buckle at the rim; deeper ones are cones.") is { } depth) findings.Add(depth);
        else if (bore / 2 / Depth > Math.Sqrt(2))
            findings.Add(VesselsFindings.DomeIsTooFlat(1 / Math.Sqrt(2)));
        return findings;
    }
}
