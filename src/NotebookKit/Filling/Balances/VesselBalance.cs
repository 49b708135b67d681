using NotebookKit.Materials.Fluids;

namespace NotebookKit.Filling.Balances;

/// <summary>Mass and energy balance of gas in a rigid volume, for any equation of state.</summary>
/// <remarks>
/// d(m u)/dt = ṁ_in h_in − ṁ_out h + Q, du = cv dT + (∂u/∂ρ) dρ. Source: Cengel and Boles 2006 (energy balance of an open system); Span
/// 2000 (derivative).
/// </remarks>
internal static class VesselBalance
{
    /// <summary>Rise of temperature, K/s.</summary>
    public static double TemperatureRate(in GasPoint gas, double volumeM3, double inKgPerS, double inEnthalpy, double outKgPerS,
        double heatW)
    {
        var mass = gas.Density * volumeM3;
        var densityRate = (inKgPerS - outKgPerS) / volumeM3;
        return (inKgPerS * (inEnthalpy - gas.Energy) - outKgPerS * (gas.Enthalpy - gas.Energy)
            + heatW - mass * gas.EnergyByDensity * densityRate) / (mass * gas.Cv);
    }
}
