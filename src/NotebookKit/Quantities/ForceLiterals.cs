using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Forces: <c>450.Newtons()</c>.</summary>
public static class ForceLiterals
{
    /// <summary>The number as a quantity in N.</summary>
    /// <param name="value">Number of N [N]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Force Newtons<T>(this T value) where T : struct, INumber<T> =>
        Force.FromNewtons(Finite.Check(double.CreateChecked(value), "force", "N"));

    /// <summary>The number as a quantity in kN.</summary>
    /// <param name="value">Number of kN [kN]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Force Kilonewtons<T>(this T value) where T : struct, INumber<T> =>
        Force.FromKilonewtons(Finite.Check(double.CreateChecked(value), "force", "kN"));
}
