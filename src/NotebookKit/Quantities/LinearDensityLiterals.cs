using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Linear densities of tows and cords: <c>400.Tex()</c> (grams in a kilometre).</summary>
public static class LinearDensityLiterals
{
    /// <summary>The number as a quantity in tex.</summary>
    /// <param name="value">Number of tex [tex]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static LinearDensity Tex<T>(this T value) where T : struct, INumber<T> =>
        LinearDensity.FromKilogramsPerMeter(Finite.Check(double.CreateChecked(value), "linear density", "tex") * 1e-6);

    /// <summary>The number as a quantity in g/m.</summary>
    /// <param name="value">Number of g/m [g/m]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static LinearDensity GramsPerMetre<T>(this T value) where T : struct, INumber<T> =>
        LinearDensity.FromGramsPerMeter(Finite.Check(double.CreateChecked(value), "linear density", "g/m"));
}
