using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Times: <c>30.Seconds()</c>.</summary>
public static class DurationLiterals
{
    /// <summary>The number as a quantity in s.</summary>
    /// <param name="value">Number of s [s]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Duration Seconds<T>(this T value) where T : struct, INumber<T> =>
        Duration.FromSeconds(Finite.Check(double.CreateChecked(value), "duration", "s"));

    /// <summary>The number as a quantity in ms.</summary>
    /// <param name="value">Number of ms [ms]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Duration Milliseconds<T>(this T value) where T : struct, INumber<T> =>
        Duration.FromMilliseconds(Finite.Check(double.CreateChecked(value), "duration", "ms"));

    /// <summary>The number as a quantity in min.</summary>
    /// <param name="value">Number of min [min]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Duration Minutes<T>(this T value) where T : struct, INumber<T> =>
        Duration.FromMinutes(Finite.Check(double.CreateChecked(value), "duration", "min"));

    /// <summary>The number as a quantity in h.</summary>
    /// <param name="value">Number of h [h]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Duration Hours<T>(this T value) where T : struct, INumber<T> =>
        Duration.FromHours(Finite.Check(double.CreateChecked(value), "duration", "h"));
}
