using NotebookKit.Materials;
using UnitsNet;
using NotebookKit.Quantities;

namespace NotebookKit.Filling;

/// <summary>Closed forms for a rigid vessel charged without loss of heat from a supply at constant temperature.</summary>
/// <remarks>Ideal gas. Source: Y. A. Cengel, M. A. Boles, Thermodynamics, 2006, charging of a rigid tank (from memory; re-derived from the energy balance).</remarks>
public static class Charging
{
    /// <summary>Temperature after charging: γ Ts/(1 + (p₁/p₂)(γ Ts/T₁ − 1)). Source: Cengel and Boles 2006.</summary>
    /// <param name="from">Pressure before; 0 or above.</param>
    /// <param name="to">Pressure after; above <paramref name="from"/>.</param>
    /// <param name="start">Temperature of the gas before; above 0 K.</param>
    /// <param name="supply">Temperature of the supply at rest; above 0 K.</param>
    /// <param name="gas">The gas.</param>
    public static Temperature TemperatureAfter(AbsolutePressure from, AbsolutePressure to, Temperature start, Temperature supply, Gas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        return Temperature.FromKelvins(KelvinsAfter(from.Pascals, to.Pascals, start.Kelvins, supply.Kelvins, gas.HeatCapacityRatio));
    }

    /// <summary>Pressure after the charged gas has cooled to the surroundings. Source: ideal gas at constant volume.</summary>
    /// <param name="charged">Pressure when the valve shuts; above 0.</param>
    /// <param name="hot">Temperature when the valve shuts; above 0 K.</param>
    /// <param name="surroundings">Temperature it cools to; above 0 K.</param>
    public static AbsolutePressure Settled(AbsolutePressure charged, Temperature hot, Temperature surroundings) =>
        AbsolutePressure.FromPascals(charged.Pascals * surroundings.Kelvins / hot.Kelvins);

    /// <summary>Pressure to charge to so that it settles where wanted: γ (Ts/Ta) p_s − p₁(γ Ts/T₁ − 1). Source: Cengel and Boles 2006, solved for p₂.</summary>
    /// <param name="from">Pressure before; 0 or above.</param>
    /// <param name="settled">Pressure wanted after cooling; above <paramref name="from"/>.</param>
    /// <param name="start">Temperature of the gas before; above 0 K.</param>
    /// <param name="supply">Temperature of the supply at rest; above 0 K.</param>
    /// <param name="surroundings">Temperature it cools to; above 0 K.</param>
    /// <param name="gas">The gas.</param>
    public static AbsolutePressure ToSettleAt(
        AbsolutePressure from, AbsolutePressure settled, Temperature start, Temperature supply, Temperature surroundings, Gas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        var hot = gas.HeatCapacityRatio * supply.Kelvins;
        return AbsolutePressure.FromPascals(hot / surroundings.Kelvins * settled.Pascals - from.Pascals * (hot / start.Kelvins - 1));
    }

    /// <summary>Temperature of gas that cools against a wall at constant temperature: Ta + (T − Ta) exp(−t/τ). Source: lumped cooling, constant film coefficient.</summary>
    /// <param name="hot">Temperature when the valve shuts; above 0 K.</param>
    /// <param name="surroundings">Temperature of the wall; above 0 K.</param>
    /// <param name="elapsed">Time since; 0 or above.</param>
    /// <param name="timeConstant">Gas mass times cv over film coefficient times surface; above 0. Fit it to a log.</param>
    public static Temperature CooledAfter(Temperature hot, Temperature surroundings, Duration elapsed, Duration timeConstant) =>
        Temperature.FromKelvins(surroundings.Kelvins + (hot.Kelvins - surroundings.Kelvins) * Math.Exp(-(elapsed / timeConstant)));

    internal static double KelvinsAfter(double fromPa, double toPa, double startK, double supplyK, double ratio)
    {
        var hot = ratio * supplyK;
        return hot / (1 + fromPa / toPa * (hot / startK - 1));
    }
}
