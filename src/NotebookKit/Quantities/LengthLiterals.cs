using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Lengths as they are spoken: <c>63.Millimetres()</c>.</summary>
public static class LengthLiterals
{
    /// <summary>The number as a quantity in m.</summary>
    /// <param name="value">Number of m [m]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Length Metres<T>(this T value) where T : struct, INumber<T> =>
        Length.FromMeters(Finite.Check(double.CreateChecked(value), "length", "m"));

    /// <summary>The number as a quantity in mm.</summary>
    /// <param name="value">Number of mm [mm]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Length Millimetres<T>(this T value) where T : struct, INumber<T> =>
        Length.FromMillimeters(Finite.Check(double.CreateChecked(value), "length", "mm"));

    /// <summary>The number as a quantity in cm.</summary>
    /// <param name="value">Number of cm [cm]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Length Centimetres<T>(this T value) where T : struct, INumber<T> =>
        Length.FromCentimeters(Finite.Check(double.CreateChecked(value), "length", "cm"));

    /// <summary>The number as a quantity in µm.</summary>
    /// <param name="value">Number of µm [µm]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Length Micrometres<T>(this T value) where T : struct, INumber<T> =>
        Length.FromMicrometers(Finite.Check(double.CreateChecked(value), "length", "µm"));

    /// <summary>The number as a quantity in in.</summary>
    /// <param name="value">Number of in [in]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Length Inches<T>(this T value) where T : struct, INumber<T> =>
        Length.FromInches(Finite.Check(double.CreateChecked(value), "length", "in"));

    /// <summary>The number as a quantity in ft.</summary>
    /// <param name="value">Number of ft [ft]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Length Feet<T>(this T value) where T : struct, INumber<T> =>
        Length.FromFeet(Finite.Check(double.CreateChecked(value), "length", "ft"));
}
