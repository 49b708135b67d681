using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Speeds: <c>5.MetresPerSecond()</c>.</summary>
public static class SpeedLiterals
{
    /// <summary>The number as a quantity in m/s.</summary>
    /// <param name="value">Number of m/s [m/s]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Speed MetresPerSecond<T>(this T value) where T : struct, INumber<T> =>
        Speed.FromMetersPerSecond(Finite.Check(double.CreateChecked(value), "speed", "m/s"));

    /// <summary>The number as a quantity in km/h.</summary>
    /// <param name="value">Number of km/h [km/h]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Speed KilometresPerHour<T>(this T value) where T : struct, INumber<T> =>
        Speed.FromKilometersPerHour(Finite.Check(double.CreateChecked(value), "speed", "km/h"));

    /// <summary>The number as a quantity in kn.</summary>
    /// <param name="value">Number of kn [kn]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Speed Knots<T>(this T value) where T : struct, INumber<T> =>
        Speed.FromKnots(Finite.Check(double.CreateChecked(value), "speed", "kn"));
}
