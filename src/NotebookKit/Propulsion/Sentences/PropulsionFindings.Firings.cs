using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion;

internal static partial class PropulsionFindings
{
    // Propulsion/Firings/FiringModel
    internal static Finding FillPressureAboveBarAir(GaugePressure pressure) =>
        Finding.Warning(
            $"fill pressure is {pressure}: above 30 bar air is no ideal gas; with γ = 1.4 the pressure late in the water "
            + "phase comes out up to 5 % too high. Use FlowModel.Real.");

    internal static Finding WaterMayFreeze(Temperature gasTemperature) =>
        Finding.Warning(
            $"the gas stands at {gasTemperature.Show()} over water: plain water freezes below 0 °C, and ice blocks the "
            + "nozzle. The firing is computed as if the water stayed liquid.");

    internal static Finding PressureIsSpentWithWaterLeft(double waterLeftKg) =>
        Finding.Warning(string.Create(CultureInfo.InvariantCulture,
            $"the pressure is spent with {waterLeftKg:0} g of water still aboard; the water is carried as dead mass. Use "
            + $"less water or more pressure."));

    // Propulsion/Firings/StaticFiringResult
    internal static Finding DidNotReachEnd(string? failure, string status) =>
        Finding.Error($"the {failure} did not reach its end ({status}); use none of its numbers.");
}
