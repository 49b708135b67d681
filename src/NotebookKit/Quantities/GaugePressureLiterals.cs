using System.Numerics;
using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Gauge and absolute pressures as they are spoken: <c>55.BarGauge()</c>, <c>800.PsiGauge()</c>, <c>1.BarAbsolute()</c>.</summary>
public static class GaugePressureLiterals
{
    /// <summary>The number as a gauge pressure in bar.</summary>
    /// <param name="value">Bar above ambient [bar]; any finite value.</param>
    public static GaugePressure BarGauge<T>(this T value) where T : struct, INumber<T> =>
        GaugePressure.FromBar(double.CreateChecked(value));

    /// <summary>The number as a gauge pressure in pounds-force per square inch.</summary>
    /// <param name="value">psi above ambient [psi]; any finite value.</param>
    public static GaugePressure PsiGauge<T>(this T value) where T : struct, INumber<T> =>
        GaugePressure.FromDifference(value.Psi());

    /// <summary>The number as an absolute pressure in bar.</summary>
    /// <param name="value">Bar above vacuum [bar]; 0 or above.</param>
    public static AbsolutePressure BarAbsolute<T>(this T value) where T : struct, INumber<T> =>
        AbsolutePressure.FromBar(double.CreateChecked(value));

    /// <summary>The number as an absolute pressure in pounds-force per square inch.</summary>
    /// <param name="value">psi above vacuum [psi]; 0 or above.</param>
    public static AbsolutePressure PsiAbsolute<T>(this T value) where T : struct, INumber<T> =>
        AbsolutePressure.FromDifference(value.Psi());

    /// <summary>A pressure difference read as a gauge pressure.</summary>
    /// <param name="difference">Pressure above ambient; any finite value.</param>
    public static GaugePressure Gauge(this Pressure difference) => GaugePressure.FromDifference(difference);

    /// <summary>A pressure read as an absolute pressure.</summary>
    /// <param name="aboveVacuum">Pressure above vacuum; 0 or above.</param>
    public static AbsolutePressure Absolute(this Pressure aboveVacuum) => AbsolutePressure.FromDifference(aboveVacuum);
}
