using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A fitting with a flange inside, drawn tight by a nut outside: the thread carries the clamp and the flange the thrust.</summary>
/// <param name="Material">What fitting and nut are made of, the weaker of both.</param>
/// <param name="Nominal">Nominal diameter of the thread; 2 to 300 mm, at most the opening.</param>
/// <param name="Pitch">Pitch of the thread; 0.3 to 8 mm.</param>
/// <param name="NutHeight">Length over which nut and fitting engage; 1 to 200 mm.</param>
/// <param name="Flange">Thickness of the flange; 0.5 to 100 mm.</param>
/// <param name="FlangeDiameter">Outer diameter of the flange; above the opening.</param>
public sealed record ClampedFitting(IsotropicMaterial Material, Length Nominal, Length Pitch, Length NutHeight, Length Flange,
    Length FlangeDiameter) : Fitting
{
    /// <summary>Whether the flange lies inside, where the pressure presses it on the closure; else the nut takes the
    /// thrust.</summary>
    public bool FlangeInside { get; init; } = true;

    /// <inheritdoc/>
    public override string Name => "clamped fitting";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Closure closure)
    {
        List<Finding> findings = [.. base.Validate(closure), .. Material.Validate()];
        Add(findings,
            new ValidRange<Length>(2.Millimetres(), UnitMath.Max(2.Millimetres(), closure.Opening)).Find(Nominal,
                "diameter of the fitting's thread", "A clamped fitting goes through the opening."),
            new ValidRange<Length>(0.3.Millimetres(), 8.Millimetres()).Find(Pitch, "pitch of the fitting's thread",
                "Measure over ten turns."),
            new ValidRange<Length>(1.Millimetres(), 200.Millimetres()).Find(NutHeight, "engagement of the nut",
                "Threads that don't engage hold nothing; engage three turns at the least."),
            new ValidRange<Length>(0.5.Millimetres(), 100.Millimetres()).Find(Flange, "thickness of the fitting's flange",
                "2 to 6 mm is usual."),
            new ValidRange<Length>(closure.Opening + 0.5.Millimetres(), 500.Millimetres()).Find(FlangeDiameter,
                "diameter of the fitting's flange", "A flange that doesn't reach over the opening's edge holds nothing."));
        return findings;
    }
}
