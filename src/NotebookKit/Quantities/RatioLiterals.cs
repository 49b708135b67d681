using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Shares: <c>32.Percent()</c>.</summary>
public static class RatioLiterals
{
    /// <summary>The number as a quantity in %.</summary>
    /// <param name="value">Number of % [%]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Ratio Percent<T>(this T value) where T : struct, INumber<T> =>
        Ratio.FromPercent(Finite.Check(double.CreateChecked(value), "ratio", "%"));
}
