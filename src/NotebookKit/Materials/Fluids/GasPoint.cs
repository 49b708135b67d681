namespace NotebookKit.Materials.Fluids;

/// <summary>A gas at one temperature and density, in SI: what integrations ask an equation of state for.</summary>
/// <param name="Kelvins">Temperature, K.</param>
/// <param name="Density">Density, kg/m³.</param>
/// <param name="Pascals">Pressure, Pa.</param>
/// <param name="Energy">Internal energy, J/kg, against the equation's own zero.</param>
/// <param name="Entropy">Entropy, J/(kg·K), against the equation's own zero.</param>
/// <param name="Cv">Heat capacity at constant volume, J/(kg·K).</param>
/// <param name="Cp">Heat capacity at constant pressure, J/(kg·K).</param>
/// <param name="SoundSpeed">Speed of sound, m/s.</param>
/// <param name="PressureByTemperature">(∂p/∂T) at constant density, Pa/K.</param>
/// <param name="PressureByDensity">(∂p/∂ρ) at constant temperature, Pa/(kg/m³).</param>
internal readonly record struct GasPoint(
    double Kelvins, double Density, double Pascals, double Energy, double Entropy, double Cv, double Cp, double SoundSpeed,
    double PressureByTemperature, double PressureByDensity)
{
    /// <summary>Enthalpy, J/kg, against the equation's own zero.</summary>
    public double Enthalpy => Energy + Pascals / Density;

    /// <summary>(∂u/∂ρ) at constant temperature, J/kg per kg/m³.</summary>
    public double EnergyByDensity => (Pascals - Kelvins * PressureByTemperature) / (Density * Density);

    /// <summary>Growth in volume per kelvin at constant pressure, 1/K.</summary>
    public double Expansivity => PressureByTemperature / (Density * PressureByDensity);
}
