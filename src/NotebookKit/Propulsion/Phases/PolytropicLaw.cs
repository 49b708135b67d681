namespace NotebookKit.Propulsion.Phases;

/// <summary>p Vⁿ constant for an ideal gas.</summary>
internal readonly struct PolytropicLaw(double startPressurePa, double startTemperatureK, double startVolumeM3, double exponent, double heatCapacityRatio)
    : IExpansionLaw<PolytropicLaw>
{
    public double Pressure(double volumeM3) => startPressurePa * Math.Pow(startVolumeM3 / volumeM3, exponent);

    public double Temperature(double volumeM3) => startTemperatureK * Math.Pow(startVolumeM3 / volumeM3, exponent - 1);

    public double EnergyGivenUp(double volumeM3) =>
        exponent == heatCapacityRatio
            ? (startPressurePa * startVolumeM3 - Pressure(volumeM3) * volumeM3) / (heatCapacityRatio - 1)
            : double.NaN;

    public double Available(double ambientPa)
    {
        var expanded = startVolumeM3 * Math.Pow(startPressurePa / ambientPa, 1 / heatCapacityRatio);
        return (startPressurePa * startVolumeM3 - ambientPa * expanded) / (heatCapacityRatio - 1) - ambientPa * (expanded - startVolumeM3);
    }

    public PolytropicLaw ForStartVolume(double volumeM3) => new(startPressurePa, startTemperatureK, volumeM3, exponent, heatCapacityRatio);
}
