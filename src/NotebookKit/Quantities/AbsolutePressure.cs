using System.Globalization;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>
/// A pressure read against vacuum, as gas laws want it. It never mixes with a <see cref="GaugePressure"/>.
/// </summary>
/// <remarks>Stored in pascals; zero or above.</remarks>
public readonly record struct AbsolutePressure : IComparable<AbsolutePressure>
{
    private AbsolutePressure(double pascals)
    {
        Pascals = Finite.Check(pascals, "absolute pressure", "Pa");
        if (pascals < 0)
            throw new ArgumentOutOfRangeException(
                nameof(pascals),
                string.Create(CultureInfo.InvariantCulture, $"absolute pressure is {Digits.Round(pascals / 1e5)} bar, below "
                    + $"vacuum; it must be 0 bar or above. Was a gauge reading meant? Then use GaugePressure."));
    }

    /// <summary>The pressure above vacuum [Pa].</summary>
    public double Pascals { get; }

    /// <summary>The pressure above vacuum [bar].</summary>
    public double Bar => Pascals / 1e5;

    /// <summary>The pressure above vacuum [psi].</summary>
    public double Psi => Pressure.FromPascals(Pascals).PoundsForcePerSquareInch;

    /// <summary>Standard sea-level air, 101 325 Pa. Source: U.S. Standard Atmosphere, 1976, Table 2.</summary>
    public static AbsolutePressure StandardSeaLevel => new(StandardConstants.SeaLevelPressurePa);

    /// <summary>From pascals.</summary>
    /// <param name="pascals">Pressure above vacuum [Pa]; 0 or above.</param>
    public static AbsolutePressure FromPascals(double pascals) => new(pascals);

    /// <summary>From bar.</summary>
    /// <param name="bar">Pressure above vacuum [bar]; 0 or above.</param>
    public static AbsolutePressure FromBar(double bar) => new(bar * 1e5);

    /// <summary>From a pressure in any unit, read as a difference to vacuum.</summary>
    /// <param name="aboveVacuum">Pressure above vacuum; 0 or above.</param>
    public static AbsolutePressure FromDifference(Pressure aboveVacuum) => new(aboveVacuum.Pascals);

    /// <summary>The gauge reading in the given surroundings.</summary>
    /// <param name="ambient">Surrounding air pressure; 0 or above.</param>
    public GaugePressure ToGauge(AbsolutePressure ambient) => GaugePressure.FromPascals(Pascals - ambient.Pascals);

    /// <inheritdoc/>
    public int CompareTo(AbsolutePressure other) => Pascals.CompareTo(other.Pascals);

    /// <summary>Difference of two absolute pressures.</summary>
    /// <param name="left">Minuend.</param>
    /// <param name="right">Subtrahend.</param>
    public static Pressure operator -(AbsolutePressure left, AbsolutePressure right) => Pressure.FromPascals(left.Pascals - right.Pascals);

    /// <summary>Ratio of two absolute pressures [-].</summary>
    /// <param name="left">Numerator.</param>
    /// <param name="right">Denominator.</param>
    public static double operator /(AbsolutePressure left, AbsolutePressure right) => left.Pascals / right.Pascals;

    /// <summary>Order of two absolute pressures.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    public static bool operator <(AbsolutePressure left, AbsolutePressure right) => left.Pascals < right.Pascals;

    /// <inheritdoc cref="op_LessThan(AbsolutePressure, AbsolutePressure)"/>
    public static bool operator >(AbsolutePressure left, AbsolutePressure right) => left.Pascals > right.Pascals;

    /// <inheritdoc cref="op_LessThan(AbsolutePressure, AbsolutePressure)"/>
    public static bool operator <=(AbsolutePressure left, AbsolutePressure right) => left.Pascals <= right.Pascals;

    /// <inheritdoc cref="op_LessThan(AbsolutePressure, AbsolutePressure)"/>
    public static bool operator >=(AbsolutePressure left, AbsolutePressure right) => left.Pascals >= right.Pascals;

    /// <summary>For example "61 bar absolute".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Digits.Round(Bar)} bar absolute");
}
