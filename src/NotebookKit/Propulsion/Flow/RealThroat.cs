using NotebookKit.Materials.Fluids;

namespace NotebookKit.Propulsion.Flow;

/// <summary>The jet of a converging nozzle straight from an equation of state, for a gas whose entropy changes as the wall warms
/// it.</summary>
/// <remarks>
/// The throat is first guessed with a constant isentropic exponent, then put back on the isentrope to first order. Mass flux and momentum
/// are at their maximum at the throat, so that what is left is of second order: below 2e-4 up to 200 bar against the exact throat.
/// </remarks>
internal static class RealThroat
{
    /// <summary>Mass flux [kg/(s m²)], momentum flux with pressure [Pa], and throat pressure [Pa] of the sonic jet.</summary>
    public static (double Flux, double Momentum, double Pressure) Sonic(RealGas gas, in GasPoint inlet)
    {
        var kappa = RealExpansion.Exponent(inlet);
        var density = inlet.Density * Math.Pow(2 / (kappa + 1), 1 / (kappa - 1));
        var point = At(gas, inlet, density, out var pressure, out var enthalpy);
        var speed = Math.Sqrt(2 * Math.Max(0, inlet.Enthalpy - enthalpy));
        return (point.Density * speed, point.Density * speed * speed + pressure, pressure);
    }

    /// <summary>Exit density [kg/m³] and speed [m/s] of a jet that leaves at the outside pressure.</summary>
    public static (double Density, double Speed) Subsonic(RealGas gas, in GasPoint inlet, double ambientPa)
    {
        var kappa = RealExpansion.Exponent(inlet);
        var density = inlet.Density * Math.Pow(ambientPa / inlet.Pascals, 1 / kappa);
        var point = At(gas, inlet, density, out var pressure, out var enthalpy);
        // From the guessed density to the outside pressure along the isentrope: dh = dp/ρ, dρ = dp/a².
        var fall = ambientPa - pressure;
        enthalpy += fall / point.Density;
        density += fall / (point.SoundSpeed * point.SoundSpeed);
        return (density, Math.Sqrt(2 * Math.Max(0, inlet.Enthalpy - enthalpy)));
    }

    private static GasPoint At(RealGas gas, in GasPoint inlet, double density, out double pressure, out double enthalpy)
    {
        var kelvins = inlet.Kelvins * Math.Pow(density / inlet.Density, RealExpansion.Cooling(inlet));
        var point = gas.Point(kelvins, density);
        var correction = (inlet.Entropy - point.Entropy) * kelvins / point.Cv;
        pressure = point.Pascals + point.PressureByTemperature * correction;
        enthalpy = point.Enthalpy + (point.Cv + point.PressureByTemperature / point.Density) * correction;
        return point;
    }
}
