using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>A woven cloth or a unidirectional tape.</summary>
/// <param name="Name">Name it is looked up by.</param>
/// <param name="Fibre">What it is woven of.</param>
/// <param name="ArealWeight">Dry weight of a square metre; 5 to 2000 g/m².</param>
/// <param name="WarpShare">Share of the fibre that runs along the roll: 50 % for a balanced cloth, 100 % for a tape; 0 to 100 %.</param>
/// <param name="RollWidth">Usable width of the roll; 5 to 5000 mm.</param>
public sealed record Cloth(string Name, Fibre Fibre, Property<AreaDensity> ArealWeight, Ratio WarpShare, Length RollWidth) : IMaterial
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Overrides => [.. OverrideList.Of(Name, (ArealWeight, "areal weight")), .. Fibre.Overrides];

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings =
        [
            .. ArealWeight.Find(Name, "areal weight", new(5.Gsm(), 2000.Gsm()),
                "Light glass is near 80, common carbon twill near 200 g/m²."),
            .. Fibre.Validate(),
        ];
        if (new ValidRange<Ratio>(0.Percent(), 100.Percent()).Find(WarpShare, $"{Name}: warp share", "A balanced cloth has 50 %.")
            is { } warp) findings.Add(warp);
        if (new ValidRange<Length>(5.Millimetres(), 5000.Millimetres()).Find(RollWidth, $"{Name}: roll width", "Measure the roll.")
            is { } width) findings.Add(width);
        return findings;
    }

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
