using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>Strain of a laminate at one place through its thickness, in the laminate's axes.</summary>
/// <param name="X">Strain along x; above 0 where it stretches.</param>
/// <param name="Y">Strain along y; above 0 where it stretches.</param>
/// <param name="Shear">Engineering shear strain γxy; any sign.</param>
public sealed record LaminateStrain(Ratio X, Ratio Y, Ratio Shear)
{
    internal static LaminateStrain Of(double x, double y, double shear) =>
        new(Ratio.FromDecimalFractions(x), Ratio.FromDecimalFractions(y), Ratio.FromDecimalFractions(shear));
}
