using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Masses: <c>140.Grams()</c>.</summary>
public static class MassLiterals
{
    /// <summary>The number as a quantity in kg.</summary>
    /// <param name="value">Number of kg [kg]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Mass Kilograms<T>(this T value) where T : struct, INumber<T> =>
        Mass.FromKilograms(Finite.Check(double.CreateChecked(value), "mass", "kg"));

    /// <summary>The number as a quantity in g.</summary>
    /// <param name="value">Number of g [g]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Mass Grams<T>(this T value) where T : struct, INumber<T> =>
        Mass.FromGrams(Finite.Check(double.CreateChecked(value), "mass", "g"));

    /// <summary>The number as a quantity in oz.</summary>
    /// <param name="value">Number of oz [oz]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Mass Ounces<T>(this T value) where T : struct, INumber<T> =>
        Mass.FromOunces(Finite.Check(double.CreateChecked(value), "mass", "oz"));

    /// <summary>The number as a quantity in lb.</summary>
    /// <param name="value">Number of lb [lb]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Mass Pounds<T>(this T value) where T : struct, INumber<T> =>
        Mass.FromPounds(Finite.Check(double.CreateChecked(value), "mass", "lb"));
}
