using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Limits;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>Round pieces of cloth laid over a closure, each turned against the one beneath, and lapped on to the wall.</summary>
/// <param name="Cloth">The cloth; balanced, 40 to 60 % warp.</param>
/// <param name="Count">How many; 1 to 40.</param>
/// <remarks>Source: netting analysis of a layup alike in every direction; the resin's density of 1150 kg/m³ is common practice, no
/// source.</remarks>
public sealed record CapDiscs(Cloth Cloth, int Count)
{
    private const double ResinDensity = 1150;

    /// <summary>How far they are lapped on to the wall; 0 to 500 mm. Discs that don't reach the wall add nothing to the thrust
    /// held.</summary>
    public Length Lap { get; init; } = 25.Millimetres();

    /// <summary>Fibre volume fraction; 5 to 78.5 %.</summary>
    public Ratio FibreFraction { get; init; } = 40.Percent();

    /// <summary>Thickness of all of them, cured. Source: mass of fibre over density and fraction.</summary>
    public Length Thickness => Length.FromMillimeters(1000 * FibreThicknessM / FibreFraction.DecimalFractions);

    /// <summary>Diameter that each is cut to.</summary>
    /// <param name="closure">The closure they cover.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public Length DiameterOver(Closure closure, Length bore)
    {
        ArgumentNullException.ThrowIfNull(closure);
        var reach = closure.Meridian(bore) + (closure is ConicalClosure ? closure.Opening / 2 : Length.Zero);
        return (reach + Lap) * 2;
    }

    /// <summary>Mass of all of them with their resin.</summary>
    /// <param name="closure">The closure they cover.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public Mass MassOver(Closure closure, Length bore)
    {
        var diameter = DiameterOver(closure, bore).Meters;
        var area = Math.PI / 4 * (diameter * diameter - closure.Opening.Meters * closure.Opening.Meters);
        var resin = FibreThicknessM * (1 / FibreFraction.DecimalFractions - 1) * ResinDensity;
        return Mass.FromGrams(1000 * area * (Count * Cloth.ArealWeight.Value.KilogramsPerSquareMeter + resin));
    }

    /// <summary>Thickness of the fibre alone [m].</summary>
    internal double FibreThicknessM =>
        Count * Cloth.ArealWeight.Value.KilogramsPerSquareMeter / Cloth.Fibre.Density.Value.KilogramsPerCubicMeter;

    /// <summary>All that is wrong with them.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. Cloth.Validate()];
        if (Count is < 1 or > 40) findings.Add(VesselsFindings.DiscsOutOfRange(Cloth.Name, Count));
        if (new ValidRange<Length>(0.Millimetres(), 500.Millimetres()).Find(Lap, "lap of the cap discs on the wall",
            "25 mm is common practice.") is { } lap) findings.Add(lap);
        if (new ValidRange<Ratio>(40.Percent(), 60.Percent()).Find(Cloth.WarpShare, $"warp share of {Cloth.Name} in the cap discs",
            "Cap discs take a balanced cloth.") is { } warp) findings.Add(warp);
        if (CompositeLimits.FindFibreFraction(FibreFraction, "fibre volume fraction of the cap discs") is { } fraction)
            findings.Add(fraction);
        return findings;
    }
}
