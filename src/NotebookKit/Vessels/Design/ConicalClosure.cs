using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A cone that narrows from the bore to its opening: a tail cone.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Wall">Its wall; 0.1 to 100 mm.</param>
/// <param name="HalfAngle">Angle between side and axis; 5° to 30°, past which the corner at its wide end needs a ring of its own.</param>
/// <remarks>Source: geometry; the limit of 30°, ASME Section VIII Division 1, UG-32 and Appendix 1-5 (unverified).</remarks>
public sealed record ConicalClosure(IsotropicMaterial Material, Length Wall, Angle HalfAngle) : Closure(Material, Wall)
{
    /// <inheritdoc/>
    public override string Shape => "conical closure";

    /// <inheritdoc/>
    public override Length DepthInside(Length bore) => Length.FromMeters(
        Finite.Check((bore - Opening).Meters / 2 / Math.Tan(HalfAngle.Radians), "depth of the cone", "m"));

    /// <inheritdoc/>
    public override Length Meridian(Length bore) => Length.FromMeters(
        Finite.Check((bore - Opening).Meters / 2 / Math.Sin(HalfAngle.Radians), "length of the cone's side", "m"));

    /// <inheritdoc/>
    public override Volume VolumeInside(Length bore)
    {
        double a = bore.Meters / 2, b = Opening.Meters / 2;
        return Volume.FromCubicMeters(Math.PI / 3 * DepthInside(bore).Meters * (a * a + a * b + b * b));
    }

    /// <inheritdoc/>
    public override Volume Solid(Length bore) => Volume.FromCubicMeters(
        Math.PI * ((bore.Meters + Opening.Meters) / 2 + Wall.Meters * Math.Cos(HalfAngle.Radians)) * Meridian(bore).Meters * Wall.Meters);

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. base.Validate(bore)];
        if (new ValidRange<Angle>(5.Degrees(), 30.Degrees()).Find(HalfAngle, "half angle of the cone",
            "A blunter cone bends its wide end; use a dome.") is { } angle) findings.Add(angle);
        return findings;
    }
}
