using System.Numerics;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Pressure differences, stresses and moduli: <c>230.Gigapascals()</c>. A vessel's pressure is a <see cref="GaugePressure"/>:
/// <c>55.BarGauge()</c>.</summary>
public static class PressureLiterals
{
    /// <summary>The number as a quantity in bar.</summary>
    /// <param name="value">Number of bar [bar]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Pressure Bar<T>(this T value) where T : struct, INumber<T> =>
        Pressure.FromBars(Finite.Check(double.CreateChecked(value), "pressure", "bar"));

    /// <summary>The number as a quantity in psi.</summary>
    /// <param name="value">Number of psi [psi]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Pressure Psi<T>(this T value) where T : struct, INumber<T> =>
        Pressure.FromPoundsForcePerSquareInch(Finite.Check(double.CreateChecked(value), "pressure", "psi"));

    /// <summary>The number as a quantity in Pa.</summary>
    /// <param name="value">Number of Pa [Pa]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Pressure Pascals<T>(this T value) where T : struct, INumber<T> =>
        Pressure.FromPascals(Finite.Check(double.CreateChecked(value), "pressure", "Pa"));

    /// <summary>The number as a quantity in kPa.</summary>
    /// <param name="value">Number of kPa [kPa]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Pressure Kilopascals<T>(this T value) where T : struct, INumber<T> =>
        Pressure.FromKilopascals(Finite.Check(double.CreateChecked(value), "pressure", "kPa"));

    /// <summary>The number as a quantity in MPa.</summary>
    /// <param name="value">Number of MPa [MPa]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Pressure Megapascals<T>(this T value) where T : struct, INumber<T> =>
        Pressure.FromMegapascals(Finite.Check(double.CreateChecked(value), "pressure", "MPa"));

    /// <summary>The number as a quantity in GPa.</summary>
    /// <param name="value">Number of GPa [GPa]; any finite value.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite.</exception>
    public static Pressure Gigapascals<T>(this T value) where T : struct, INumber<T> =>
        Pressure.FromGigapascals(Finite.Check(double.CreateChecked(value), "pressure", "GPa"));
}
