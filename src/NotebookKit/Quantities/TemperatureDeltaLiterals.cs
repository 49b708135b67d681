using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Temperature differences: <c>5.KelvinsOfChange()</c>.</summary>
public static class TemperatureDeltaLiterals
{
    /// <summary>The number as a quantity in K.</summary>
    /// <param name="value">Number of K [K]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static TemperatureDelta KelvinsOfChange<T>(this T value) where T : struct, INumber<T> =>
        TemperatureDelta.FromKelvins(Finite.Check(double.CreateChecked(value), "temperature change", "K"));
}
