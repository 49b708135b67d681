using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Volumes: <c>2.5.Litres()</c>.</summary>
public static class VolumeLiterals
{
    /// <summary>The number as a quantity in L.</summary>
    /// <param name="value">Number of L [L]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Volume Litres<T>(this T value) where T : struct, INumber<T> =>
        Volume.FromLiters(Finite.Check(double.CreateChecked(value), "volume", "L"));

    /// <summary>The number as a quantity in mL.</summary>
    /// <param name="value">Number of mL [mL]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Volume Millilitres<T>(this T value) where T : struct, INumber<T> =>
        Volume.FromMilliliters(Finite.Check(double.CreateChecked(value), "volume", "mL"));

    /// <summary>The number as a quantity in m³.</summary>
    /// <param name="value">Number of m³ [m³]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Volume CubicMetres<T>(this T value) where T : struct, INumber<T> =>
        Volume.FromCubicMeters(Finite.Check(double.CreateChecked(value), "volume", "m³"));
}
