using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Energies: <c>24.Joules()</c>.</summary>
public static class EnergyLiterals
{
    /// <summary>The number as a quantity in J.</summary>
    /// <param name="value">Number of J [J]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Energy Joules<T>(this T value) where T : struct, INumber<T> =>
        Energy.FromJoules(Finite.Check(double.CreateChecked(value), "energy", "J"));

    /// <summary>The number as a quantity in kJ.</summary>
    /// <param name="value">Number of kJ [kJ]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Energy Kilojoules<T>(this T value) where T : struct, INumber<T> =>
        Energy.FromKilojoules(Finite.Check(double.CreateChecked(value), "energy", "kJ"));
}
