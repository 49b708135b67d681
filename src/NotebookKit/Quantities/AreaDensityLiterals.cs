using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Areal weights of cloth and sleeve: <c>320.GramsPerSquareMetre()</c>, "gsm" in the trade.</summary>
public static class AreaDensityLiterals
{
    /// <summary>The number as a quantity in g/m².</summary>
    /// <param name="value">Number of g/m² [g/m²]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static AreaDensity GramsPerSquareMetre<T>(this T value) where T : struct, INumber<T> =>
        AreaDensity.FromGramsPerSquareMeter(Finite.Check(double.CreateChecked(value), "areal weight", "g/m²"));

    /// <summary>The number as a quantity in g/m².</summary>
    /// <param name="value">Number of g/m² [g/m²]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static AreaDensity Gsm<T>(this T value) where T : struct, INumber<T> =>
        AreaDensity.FromGramsPerSquareMeter(Finite.Check(double.CreateChecked(value), "areal weight", "g/m²"));
}
