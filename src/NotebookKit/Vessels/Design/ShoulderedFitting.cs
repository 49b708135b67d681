using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A fitting put in from inside whose shoulder bears on the closure around the opening.</summary>
/// <param name="Material">What the fitting is made of.</param>
/// <param name="Shoulder">Thickness of the shoulder; 0.5 to 100 mm.</param>
/// <param name="ShoulderDiameter">Outer diameter of the shoulder; above the opening.</param>
public sealed record ShoulderedFitting(IsotropicMaterial Material, Length Shoulder, Length ShoulderDiameter) : Fitting
{
    /// <inheritdoc/>
    public override string Name => "shouldered fitting";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Closure closure)
    {
        List<Finding> findings = [.. base.Validate(closure), .. Material.Validate()];
        Add(findings,
            new ValidRange<Length>(0.5.Millimetres(), 100.Millimetres()).Find(Shoulder, "thickness of the fitting's shoulder",
                "2 to 6 mm is usual."),
            new ValidRange<Length>(closure.Opening + 0.5.Millimetres(), 500.Millimetres()).Find(ShoulderDiameter,
                "diameter of the fitting's shoulder", "A shoulder that doesn't reach over the opening's edge holds nothing."));
        return findings;
    }
}
