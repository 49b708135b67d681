using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Propulsion.Flow;

/// <summary>Makes the table of a real gas' isentropic expansion.</summary>
/// <remarks>Source: the gas' equation of state; d ln p/d ln v = −ρ a²/p and d ln T/d ln v = −(∂p/∂T)/(ρ cv) at constant entropy.</remarks>
internal static class RealExpansion
{
    private const double Step = 0.05;
    private const double DegreesAboveLimit = 0.5;

    /// <summary>From a state down to a pressure, or to where the equation of state ends.</summary>
    /// <param name="gas">The gas.</param>
    /// <param name="pressurePa">Pressure at the start [Pa].</param>
    /// <param name="temperatureK">Temperature at the start [K].</param>
    /// <param name="lowestPa">Pressure that the last entry has to be below [Pa].</param>
    /// <param name="least">Where the last entry has to be at least, as ln(v/v₀) [-].</param>
    public static ExpansionTable Table(RealGas gas, double pressurePa, double temperatureK, double lowestPa, double least = 0)
    {
        var start = Start(gas, pressurePa, temperatureK);
        List<(double, double, double, double, double)> entries = [];
        var point = start;
        var run = WorkRun.Current;
        for (var i = 0; ; i++)
        {
            run.ThrowIfStopped();
            Check(point, pressurePa, temperatureK);
            entries.Add((Math.Log(point.Pascals), Exponent(point), Math.Log(point.Kelvins), Cooling(point), start.Energy - point.Energy));
            if (i > 1 && point.Pascals < lowestPa && (i + 0.5) * Step > least) break;
            var next = OnIsentrope(gas, point, start.Entropy, start.Density * Math.Exp(-(i + 1) * Step));
            if (next.Kelvins < gas.LowestKelvins + DegreesAboveLimit && i > 0) break;
            point = next;
        }

        return new(1 / start.Density, Step, entries);
    }

    /// <summary>Volume of a kilogram at the start [m³/kg], as the table has it.</summary>
    /// <exception cref="InvalidDesignException">The gas has no such state.</exception>
    public static double StartVolume(RealGas gas, double pressurePa, double temperatureK) =>
        1 / Start(gas, pressurePa, temperatureK).Density;

    private static GasPoint Start(RealGas gas, double pressurePa, double temperatureK)
    {
        var start = gas.PointAtPressure(pressurePa, temperatureK);
        Check(start, pressurePa, temperatureK);
        return start;
    }

    private static void Check(in GasPoint point, double pressurePa, double temperatureK)
    {
        if (!double.IsFinite(point.Pascals) || !double.IsFinite(point.Kelvins))
            throw new InvalidDesignException("Expansion of the gas", [PropulsionFindings.GasHasNoState(pressurePa, temperatureK)]);
    }

    /// <summary>Isentropic exponent ρ a²/p [-].</summary>
    public static double Exponent(in GasPoint point) => point.Density * point.SoundSpeed * point.SoundSpeed / point.Pascals;

    /// <summary>d ln T/d ln ρ at constant entropy [-].</summary>
    public static double Cooling(in GasPoint point) => point.PressureByTemperature / (point.Density * point.Cv);

    private static GasPoint OnIsentrope(RealGas gas, in GasPoint from, double entropy, double density)
    {
        var kelvins = from.Kelvins * Math.Pow(density / from.Density, Cooling(from));
        var point = gas.Point(kelvins, density);
        for (var i = 0; i < 20; i++)
        {
            var step = (entropy - point.Entropy) * kelvins / point.Cv;
            kelvins += step;
            point = gas.Point(kelvins, density);
            if (Math.Abs(step) < 1e-11 * kelvins) break;
        }

        return point;
    }
}
