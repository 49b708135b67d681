using System.Globalization;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Quantities;

/// <summary>
/// How much gas a restrictor passes when choked: volume flow at standard reference conditions over the absolute pressure ahead of it.
/// </summary>
/// <remarks>
/// Stored in m³/(s·Pa); above zero. The reference air has 1.185 kg/m³ at 293.15 K and 100 kPa.
/// Source: ISO 6358-1, Pneumatic fluid power - flow-rate characteristics, 2013 (form and constants unverified, form seen in an overview).
/// </remarks>
public readonly record struct SonicConductance : IComparable<SonicConductance>
{
    private const double LitresPerSecondBarInSi = 1e-8;

    private SonicConductance(double cubicMetresPerSecondPascal)
    {
        CubicMetresPerSecondPascal = Finite.Check(cubicMetresPerSecondPascal, "sonic conductance", "m³/(s·Pa)");
        if (cubicMetresPerSecondPascal <= 0)
            throw new ArgumentOutOfRangeException(
                nameof(cubicMetresPerSecondPascal),
                string.Create(CultureInfo.InvariantCulture, $"sonic conductance is "
                    + $"{cubicMetresPerSecondPascal / LitresPerSecondBarInSi} dm³/(s·bar); it must be above 0."));
    }

    /// <summary>The conductance [m³/(s·Pa)].</summary>
    public double CubicMetresPerSecondPascal { get; }

    /// <summary>The conductance in the unit of data sheets [dm³/(s·bar)].</summary>
    public double LitresPerSecondBar => CubicMetresPerSecondPascal / LitresPerSecondBarInSi;

    /// <summary>From the unit of data sheets.</summary>
    /// <param name="value">Conductance [dm³/(s·bar)]; above 0.</param>
    public static SonicConductance FromLitresPerSecondBar(double value) => new(value * LitresPerSecondBarInSi);

    /// <summary>From SI.</summary>
    /// <param name="value">Conductance [m³/(s·Pa)]; above 0.</param>
    public static SonicConductance FromCubicMetresPerSecondPascal(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(SonicConductance other) => CubicMetresPerSecondPascal.CompareTo(other.CubicMetresPerSecondPascal);

    /// <summary>Order of two conductances.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    public static bool operator <(SonicConductance left, SonicConductance right) => left.CompareTo(right) < 0;

    /// <inheritdoc cref="op_LessThan(SonicConductance, SonicConductance)"/>
    public static bool operator >(SonicConductance left, SonicConductance right) => left.CompareTo(right) > 0;

    /// <inheritdoc cref="op_LessThan(SonicConductance, SonicConductance)"/>
    public static bool operator <=(SonicConductance left, SonicConductance right) => left.CompareTo(right) <= 0;

    /// <inheritdoc cref="op_LessThan(SonicConductance, SonicConductance)"/>
    public static bool operator >=(SonicConductance left, SonicConductance right) => left.CompareTo(right) >= 0;

    /// <summary>For example "0.125 dm³/(s·bar)".</summary>
    public override string ToString() => $"{Digits.Round(LitresPerSecondBar)} dm³/(s·bar)";
}
