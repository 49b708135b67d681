using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Densities: <c>1780.KilogramsPerCubicMetre()</c>.</summary>
public static class DensityLiterals
{
    /// <summary>The number as a quantity in kg/m³.</summary>
    /// <param name="value">Number of kg/m³ [kg/m³]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Density KilogramsPerCubicMetre<T>(this T value) where T : struct, INumber<T> =>
        Density.FromKilogramsPerCubicMeter(Finite.Check(double.CreateChecked(value), "density", "kg/m³"));

    /// <summary>The number as a quantity in g/cm³.</summary>
    /// <param name="value">Number of g/cm³ [g/cm³]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Density GramsPerCubicCentimetre<T>(this T value) where T : struct, INumber<T> =>
        Density.FromGramsPerCubicCentimeter(Finite.Check(double.CreateChecked(value), "density", "g/cm³"));
}
