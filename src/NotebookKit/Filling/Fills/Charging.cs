using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Fills;

/// <summary>Closed forms for a rigid vessel charged without loss of heat from a supply at constant temperature.</summary>
/// <remarks>Ideal gas. Source: Y. A. Cengel, M. A. Boles, Thermodynamics, 2006, charging of a rigid tank (unverified; re-derived from the
/// energy balance).</remarks>
public static class Charging
{
    /// <summary>Temperature after charging: γ Ts/(1 + (p₁/p₂)(γ Ts/T₁ − 1)). Source: Cengel and Boles 2006.</summary>
    /// <param name="from">Pressure before; 0 to 2000 bar.</param>
    /// <param name="to">Pressure after; above <paramref name="from"/>, to 2000 bar.</param>
    /// <param name="start">Temperature of the gas before; 50 to 2000 K.</param>
    /// <param name="supply">Temperature of the supply at rest; 50 to 2000 K.</param>
    /// <param name="gas">The gas.</param>
    /// <exception cref="OutOfRangeException">A pressure or a temperature is outside its range.</exception>
    public static Temperature TemperatureAfter(AbsolutePressure from, AbsolutePressure to, Temperature start, Temperature supply, Gas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        Rising(from, to, "pressure after charging");
        Check(start, "temperature before");
        Check(supply, "temperature of the supply");
        return Temperature.FromKelvins(KelvinsAfter(from.Pascals, to.Pascals, start.Kelvins, supply.Kelvins, gas.HeatCapacityRatio));
    }

    /// <summary>Pressure after the charged gas has cooled to the surroundings. Source: ideal gas at constant volume.</summary>
    /// <param name="charged">Pressure when the valve shuts; above 0, to 2000 bar.</param>
    /// <param name="hot">Temperature when the valve shuts; 50 to 2000 K.</param>
    /// <param name="surroundings">Temperature it cools to; 50 to 2000 K.</param>
    /// <exception cref="OutOfRangeException">A pressure or a temperature is outside its range.</exception>
    public static AbsolutePressure Settled(AbsolutePressure charged, Temperature hot, Temperature surroundings)
    {
        new ValidRange<AbsolutePressure>(AbsolutePressure.FromPascals(1), Highest).Check(charged, "pressure when the valve shuts",
            "It is absolute, above vacuum.");
        Check(hot, "temperature when the valve shuts");
        Check(surroundings, "temperature of the surroundings");
        return AbsolutePressure.FromPascals(charged.Pascals * surroundings.Kelvins / hot.Kelvins);
    }

    /// <summary>Pressure to charge to so that it settles where wanted: γ (Ts/Ta) p_s − p₁(γ Ts/T₁ − 1). Source: Cengel and Boles 2006,
    /// solved for p₂.</summary>
    /// <param name="from">Pressure before; 0 to 2000 bar.</param>
    /// <param name="settled">Pressure wanted after cooling; above <paramref name="from"/>, to 2000 bar.</param>
    /// <param name="start">Temperature of the gas before; 50 to 2000 K.</param>
    /// <param name="supply">Temperature of the supply at rest; 50 to 2000 K.</param>
    /// <param name="surroundings">Temperature it cools to; 50 to 2000 K.</param>
    /// <param name="gas">The gas.</param>
    /// <exception cref="OutOfRangeException">A pressure or a temperature is outside its range.</exception>
    public static AbsolutePressure ToSettleAt(
        AbsolutePressure from, AbsolutePressure settled, Temperature start, Temperature supply, Temperature surroundings, Gas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        Rising(from, settled, "pressure wanted after cooling");
        Check(start, "temperature before");
        Check(supply, "temperature of the supply");
        Check(surroundings, "temperature of the surroundings");
        var hot = gas.HeatCapacityRatio * supply.Kelvins;
        return AbsolutePressure.FromPascals(hot / surroundings.Kelvins * settled.Pascals - from.Pascals * (hot / start.Kelvins - 1));
    }

    /// <summary>Temperature of gas that cools against a wall at constant temperature: Ta + (T − Ta) exp(−t/τ). Source: lumped cooling,
    /// constant film coefficient.</summary>
    /// <param name="hot">Temperature when the valve shuts; 50 to 2000 K.</param>
    /// <param name="surroundings">Temperature of the wall; 50 to 2000 K.</param>
    /// <param name="elapsed">Time since; 0 to 1000 hours.</param>
    /// <param name="timeConstant">Gas mass times cv over film coefficient times surface; 1 ms to 1000 hours. Fit it to a log.</param>
    /// <exception cref="OutOfRangeException">A temperature or a time is outside its range.</exception>
    public static Temperature CooledAfter(Temperature hot, Temperature surroundings, Duration elapsed, Duration timeConstant)
    {
        Check(hot, "temperature when the valve shuts");
        Check(surroundings, "temperature of the wall");
        new ValidRange<Duration>(Duration.Zero, 1000.Hours()).Check(elapsed, "time since the valve shut", "It runs forward from there.");
        new ValidRange<Duration>(1.Milliseconds(), 1000.Hours()).Check(timeConstant, "time constant of the cooling",
            "Fit it to a log; tens of seconds are usual.");
        return Temperature.FromKelvins(surroundings.Kelvins + (hot.Kelvins - surroundings.Kelvins) * Math.Exp(-(elapsed / timeConstant)));
    }

    private static readonly AbsolutePressure Highest = AbsolutePressure.FromPascals(2e8);

    private static void Rising(AbsolutePressure from, AbsolutePressure to, string name)
    {
        new ValidRange<AbsolutePressure>(AbsolutePressure.FromPascals(0), Highest).Check(from, "pressure before",
            "It is absolute: vacuum is 0.");
        new ValidRange<AbsolutePressure>(AbsolutePressure.FromPascals(Math.BitIncrement(from.Pascals)), Highest).Check(to, name,
            "Charging raises the pressure; both are absolute.");
    }

    private static void Check(Temperature temperature, string name) =>
        new ValidRange<Temperature>(50.Kelvins(), 2000.Kelvins()).Check(temperature.ToUnit(UnitsNet.Units.TemperatureUnit.Kelvin), name,
            "Check the unit it was given in.");

    internal static double KelvinsAfter(double fromPa, double toPa, double startK, double supplyK, double ratio)
    {
        var hot = ratio * supplyK;
        return hot / (1 + fromPa / toPa * (hot / startK - 1));
    }
}
