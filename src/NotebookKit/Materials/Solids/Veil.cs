using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>A light surfacing veil: it holds resin at the surface, adds mass, and is never counted on for strength.</summary>
/// <param name="Name">Name it is looked up by.</param>
/// <param name="ArealWeight">Dry weight of a square metre; 2 to 300 g/m².</param>
/// <param name="FibreDensity">Density of its fibre; 500 to 5000 kg/m³.</param>
/// <param name="FibreFraction">Fibre volume fraction it comes to when wet out, low because it is fluffy; 2 to 60 %.</param>
public sealed record Veil(string Name, Property<AreaDensity> ArealWeight, Property<Density> FibreDensity, Property<Ratio> FibreFraction)
    : IMaterial
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Overrides => OverrideList.Of(
        Name, (ArealWeight, "areal weight"), (FibreDensity, "fibre density"), (FibreFraction, "fibre fraction"));

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. ArealWeight.Find(Name, "areal weight", new(2.Gsm(), 300.Gsm()), "A surfacing veil is 20 to 50 g/m²."),
        .. FibreDensity.Find(Name, "fibre density", new(500.KilogramsPerCubicMetre(), 5000.KilogramsPerCubicMetre()),
            "Glass is near 2550, polyester near 1380 kg/m³."),
        .. FibreFraction.Find(Name, "fibre fraction", new(2.Percent(), 60.Percent()),
            "A veil takes up about five times its own volume of resin."),
    ];

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
