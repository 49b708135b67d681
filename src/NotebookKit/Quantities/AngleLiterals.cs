using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Angles: <c>45.Degrees()</c>.</summary>
public static class AngleLiterals
{
    /// <summary>The number as a quantity in °.</summary>
    /// <param name="value">Number of ° [°]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Angle Degrees<T>(this T value) where T : struct, INumber<T> =>
        Angle.FromDegrees(Finite.Check(double.CreateChecked(value), "angle", "°"));

    /// <summary>The number as a quantity in rad.</summary>
    /// <param name="value">Number of rad [rad]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Angle Radians<T>(this T value) where T : struct, INumber<T> =>
        Angle.FromRadians(Finite.Check(double.CreateChecked(value), "angle", "rad"));
}
