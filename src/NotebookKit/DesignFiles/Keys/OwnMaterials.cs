using System.Globalization;
using NotebookKit.Materials.Solids;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>Materials of the design's own as numbers: two of one name that are made otherwise differ, two that only say otherwise where
/// their numbers come from don't.</summary>
internal static class OwnMaterials
{
    /// <summary>The materials of those names that aren't as the library has them, in the order of their names.</summary>
    /// <param name="library">The library with the design's own.</param>
    /// <param name="names">Names that the vessel's values have.</param>
    public static IEnumerable<string> In(MaterialLibrary library, IReadOnlySet<string> names) =>
        from material in library.All
        where names.Contains(material.Name)
        let own = Content(material)
        where MaterialLibrary.Typical.All.FirstOrDefault(m => string.Equals(m.Name, material.Name, StringComparison.OrdinalIgnoreCase))
            is not { } known || Content(known) != own
        select $"material {material.Name.ToUpperInvariant()}={own}";

    // A resin's glass temperature is measured on the vessel that is there; it makes no other vessel.
    private static string Content(IMaterial material) => material switch
    {
        Fibre f => Joined("fibre", Of(f.Density), Of(f.LongitudinalModulus), Of(f.TransverseModulus), Of(f.ShearModulus),
            Of(f.PoissonRatio), Of(f.TensileStrength)),
        Resin r => Joined("resin", Of(r.Density), Of(r.Modulus), Of(r.PoissonRatio), Of(r.TensileStrength), Of(r.CompressiveStrength),
            Of(r.ShearStrength), Of(r.ServiceTemperature)),
        IsotropicMaterial s => Joined("solid", Of(s.Density), Of(s.Modulus), Of(s.PoissonRatio), Of(s.YieldStrength), Of(s.UsableStrain),
            Of(s.ThermalExpansion), Of(s.ServiceTemperature)),
        Adhesive a => Joined("adhesive", Of(a.Density), Of(a.ShearModulus), Of(a.OnTreatedMetal), Of(a.OnAbradedMetal),
            Of(a.OnAbradedLaminate), Of(a.OnAbradedPlastic)),
        Veil v => Joined("veil", Of(v.ArealWeight), Of(v.FibreDensity), Of(v.FibreFraction)),
        Braid b => Joined("braid", Content(b.Fibre), Number(b.NominalDiameter), Number(b.NominalAngle), Number(b.Carriers), Of(b.Yarn),
            Of(b.YarnWidth)),
        Cloth c => Joined("cloth", Content(c.Fibre), Of(c.ArealWeight), Number(c.WarpShare), Number(c.RollWidth)),
        _ => throw new NotSupportedException($"{material.GetType().Name} has no mark."),
    };

    private static string Joined(params IReadOnlyList<string> parts) => $"({string.Join(' ', parts)})";

    private static string Of<T>(Property<T> property) where T : struct, IComparable<T> =>
        $"{Number(property.Value)}~{Number(property.Spread)}";

    // In the unit that the kind of quantity is kept by, so that 6.5 cm and 65 mm are one.
    private static string Number(object value) => (value switch
    {
        IQuantity quantity => (double)quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value),
        double number => number,
        int count => count,
        _ => throw new NotSupportedException($"{value.GetType().Name} has no mark."),
    }).ToString("G10", CultureInfo.InvariantCulture);
}
