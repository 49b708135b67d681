using System.Globalization;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Quantities;

/// <summary>A distance over the cube root of an explosive mass: at one scaled distance every charge does about the same harm.</summary>
/// <remarks>Stored in m/kg^(1/3); above zero. Source of the scaling: B. Hopkinson 1915, C. Cranz 1926, as used by ASME PCC-2.</remarks>
public readonly record struct ScaledDistance : IComparable<ScaledDistance>
{
    private ScaledDistance(double metresPerCubeRootKilogram)
    {
        MetresPerCubeRootKilogram = Finite.Check(metresPerCubeRootKilogram, "scaled distance", "m/kg^(1/3)");
        if (metresPerCubeRootKilogram <= 0)
            throw new ArgumentOutOfRangeException(
                nameof(metresPerCubeRootKilogram), string.Create(CultureInfo.InvariantCulture,
                    $"scaled distance is {metresPerCubeRootKilogram} m/kg^(1/3); it must be above 0."));
    }

    /// <summary>The scaled distance [m/kg^(1/3)].</summary>
    public double MetresPerCubeRootKilogram { get; }

    /// <summary>From metres per cube root of a kilogram.</summary>
    /// <param name="value">Scaled distance [m/kg^(1/3)]; above 0.</param>
    public static ScaledDistance FromMetresPerCubeRootKilogram(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(ScaledDistance other) => MetresPerCubeRootKilogram.CompareTo(other.MetresPerCubeRootKilogram);

    /// <summary>Order of two scaled distances.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    public static bool operator <(ScaledDistance left, ScaledDistance right) => left.CompareTo(right) < 0;

    /// <inheritdoc cref="op_LessThan(ScaledDistance, ScaledDistance)"/>
    public static bool operator >(ScaledDistance left, ScaledDistance right) => left.CompareTo(right) > 0;

    /// <inheritdoc cref="op_LessThan(ScaledDistance, ScaledDistance)"/>
    public static bool operator <=(ScaledDistance left, ScaledDistance right) => left.CompareTo(right) <= 0;

    /// <inheritdoc cref="op_LessThan(ScaledDistance, ScaledDistance)"/>
    public static bool operator >=(ScaledDistance left, ScaledDistance right) => left.CompareTo(right) >= 0;

    /// <summary>For example "20 m/kg^(1/3)".</summary>
    public override string ToString() => $"{Digits.Round(MetresPerCubeRootKilogram)} m/kg^(1/3)";
}
