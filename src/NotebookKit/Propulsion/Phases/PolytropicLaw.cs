namespace NotebookKit.Propulsion.Phases;

/// <summary>p Vⁿ constant for an ideal gas.</summary>
internal readonly struct PolytropicLaw(double startPressurePa, double startTemperatureK, double startVolumeM3, double exponent, double heatCapacityRatio)
    : IExpansionLaw
{
    public double Pressure(double volumeM3) => startPressurePa * Math.Pow(startVolumeM3 / volumeM3, exponent);

    public double Temperature(double volumeM3) => startTemperatureK * Math.Pow(startVolumeM3 / volumeM3, exponent - 1);

    public double EnergyGivenUp(double volumeM3) =>
        exponent == heatCapacityRatio
            ? (startPressurePa * startVolumeM3 - Pressure(volumeM3) * volumeM3) / (heatCapacityRatio - 1)
            : double.NaN;
}
