using System.Globalization;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>
/// A pressure read against the surrounding air, as a gauge shows it. A gauge pressure and an
/// <see cref="AbsolutePressure"/> never mix: going from one to the other takes the ambient pressure.
/// </summary>
/// <remarks>Stored in pascals. Negative values are possible (suction); models that can't take them refuse them.</remarks>
public readonly record struct GaugePressure : IComparable<GaugePressure>
{
    private GaugePressure(double pascals) => Pascals = Finite.Check(pascals, "gauge pressure", "Pa");

    /// <summary>The pressure above ambient [Pa].</summary>
    public double Pascals { get; }

    /// <summary>The pressure above ambient [bar].</summary>
    public double Bar => Pascals / 1e5;

    /// <summary>The pressure above ambient [psi].</summary>
    public double Psi => Pressure.FromPascals(Pascals).PoundsForcePerSquareInch;

    /// <summary>No pressure above ambient.</summary>
    public static GaugePressure Zero => default;

    /// <summary>From pascals.</summary>
    /// <param name="pascals">Pressure above ambient [Pa]; any finite value.</param>
    public static GaugePressure FromPascals(double pascals) => new(pascals);

    /// <summary>From bar.</summary>
    /// <param name="bar">Pressure above ambient [bar]; any finite value.</param>
    public static GaugePressure FromBar(double bar) => new(bar * 1e5);

    /// <summary>From a pressure difference in any unit, read as a difference to ambient.</summary>
    /// <param name="difference">Pressure above ambient; any finite value.</param>
    public static GaugePressure FromDifference(Pressure difference) => new(difference.Pascals);

    /// <summary>The same pressure as a difference, for a formula that wants one (hoop stress, thrust on a closure).</summary>
    public Pressure AsDifference() => Pressure.FromPascals(Pascals);

    /// <summary>The absolute pressure, given the ambient it is read against.</summary>
    /// <param name="ambient">Surrounding air pressure; above zero.</param>
    public AbsolutePressure ToAbsolute(AbsolutePressure ambient) => AbsolutePressure.FromPascals(Pascals + ambient.Pascals);

    /// <inheritdoc/>
    public int CompareTo(GaugePressure other) => Pascals.CompareTo(other.Pascals);

    /// <summary>Sum of a gauge pressure and a rise in pressure.</summary>
    /// <param name="left">Start.</param>
    /// <param name="right">Rise.</param>
    public static GaugePressure operator +(GaugePressure left, Pressure right) => new(left.Pascals + right.Pascals);

    /// <summary>Difference of two gauge pressures against the same ambient.</summary>
    /// <param name="left">Minuend.</param>
    /// <param name="right">Subtrahend.</param>
    public static Pressure operator -(GaugePressure left, GaugePressure right) => Pressure.FromPascals(left.Pascals - right.Pascals);

    /// <summary>A gauge pressure times a plain number, as in proof = factor x working.</summary>
    /// <param name="pressure">Gauge pressure.</param>
    /// <param name="factor">Factor [-]; any finite value.</param>
    public static GaugePressure operator *(GaugePressure pressure, double factor) => new(pressure.Pascals * factor);

    /// <inheritdoc cref="op_Multiply(GaugePressure, double)"/>
    public static GaugePressure operator *(double factor, GaugePressure pressure) => pressure * factor;

    /// <summary>A gauge pressure over a plain number, as in working = burst / factor.</summary>
    /// <param name="pressure">Gauge pressure.</param>
    /// <param name="divisor">Divisor [-]; any finite value but zero.</param>
    public static GaugePressure operator /(GaugePressure pressure, double divisor) => new(pressure.Pascals / divisor);

    /// <summary>Ratio of two gauge pressures [-].</summary>
    /// <param name="left">Numerator.</param>
    /// <param name="right">Denominator.</param>
    public static double operator /(GaugePressure left, GaugePressure right) => left.Pascals == 0 && right.Pascals == 0
        ? throw new ArgumentOutOfRangeException(nameof(right),
            "The ratio of two gauge pressures of 0 has no value; give a pressure above 0.")
        : left.Pascals / right.Pascals;

    /// <summary>Order of two gauge pressures.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    public static bool operator <(GaugePressure left, GaugePressure right) => left.Pascals < right.Pascals;

    /// <inheritdoc cref="op_LessThan(GaugePressure, GaugePressure)"/>
    public static bool operator >(GaugePressure left, GaugePressure right) => left.Pascals > right.Pascals;

    /// <inheritdoc cref="op_LessThan(GaugePressure, GaugePressure)"/>
    public static bool operator <=(GaugePressure left, GaugePressure right) => left.Pascals <= right.Pascals;

    /// <inheritdoc cref="op_LessThan(GaugePressure, GaugePressure)"/>
    public static bool operator >=(GaugePressure left, GaugePressure right) => left.Pascals >= right.Pascals;

    /// <summary>For example "55 bar gauge".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Digits.Round(Bar)} bar gauge");
}
