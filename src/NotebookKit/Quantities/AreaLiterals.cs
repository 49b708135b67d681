using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Areas: <c>12.SquareMillimetres()</c>.</summary>
public static class AreaLiterals
{
    /// <summary>The number as a quantity in m².</summary>
    /// <param name="value">Number of m² [m²]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Area SquareMetres<T>(this T value) where T : struct, INumber<T> =>
        Area.FromSquareMeters(Finite.Check(double.CreateChecked(value), "area", "m²"));

    /// <summary>The number as a quantity in mm².</summary>
    /// <param name="value">Number of mm² [mm²]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Area SquareMillimetres<T>(this T value) where T : struct, INumber<T> =>
        Area.FromSquareMillimeters(Finite.Check(double.CreateChecked(value), "area", "mm²"));

    /// <summary>The number as a quantity in cm².</summary>
    /// <param name="value">Number of cm² [cm²]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Area SquareCentimetres<T>(this T value) where T : struct, INumber<T> =>
        Area.FromSquareCentimeters(Finite.Check(double.CreateChecked(value), "area", "cm²"));
}
