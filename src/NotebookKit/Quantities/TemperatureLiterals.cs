using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Temperatures: <c>20.Celsius()</c>.</summary>
public static class TemperatureLiterals
{
    /// <summary>The number as a quantity in °C.</summary>
    /// <param name="value">Number of °C [°C]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Temperature Celsius<T>(this T value) where T : struct, INumber<T> =>
        Temperature.FromDegreesCelsius(Finite.Check(double.CreateChecked(value), "temperature", "°C"));

    /// <summary>The number as a quantity in K.</summary>
    /// <param name="value">Number of K [K]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Temperature Kelvins<T>(this T value) where T : struct, INumber<T> =>
        Temperature.FromKelvins(Finite.Check(double.CreateChecked(value), "temperature", "K"));
}
