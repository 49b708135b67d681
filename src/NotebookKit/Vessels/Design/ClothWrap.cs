using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A cloth wrapped round in one piece, so many turns and an overlap.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Turns">Full turns; 1 to 20.</param>
/// <param name="Lay">How it lies.</param>
public sealed record ClothWrap(Cloth Cloth, int Turns = 1, ClothLay Lay = ClothLay.WarpAxial) : Ply
{
    /// <summary>Overlap past the full turns; 0 to 500 mm. Common practice is 25 mm.</summary>
    public Length Overlap { get; init; } = 25.Millimetres();

    /// <inheritdoc/>
    public override string Name => Cloth.Name;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Overrides => Cloth.Overrides;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. base.Validate(), .. Cloth.Validate()];
        if (Turns is < 1 or > 20) findings.Add(VesselsFindings.TurnsOutOfRange(Name, Turns));
        if (new ValidRange<Length>(0.Millimetres(), 500.Millimetres()).Find(Overlap, $"overlap of {Name}", "25 mm is common practice.")
            is { } overlap) findings.Add(overlap);
        else if (Overlap < 15.Millimetres())
            findings.Add(VesselsFindings.OverlapTooShort(Name, Overlap));
        if (Lay == ClothLay.Bias && Math.Abs(Cloth.WarpShare.DecimalFractions - 0.5) > 0.02)
            findings.Add(VesselsFindings.BiasClothIsUnbalanced(Name, Cloth.WarpShare));
        return findings;
    }
}

/// <summary>How a cloth lies on the vessel.</summary>
public enum ClothLay
{
    /// <summary>Warp along the axis, weft around.</summary>
    WarpAxial,

    /// <summary>Warp around, weft along the axis.</summary>
    WarpAround,

    /// <summary>On the bias: warp and weft at 45° either way.</summary>
    Bias,
}
