using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion;

/// <summary>The sentences of propulsion's findings, in one place.</summary>
internal static partial class PropulsionFindings
{
    // Propulsion/Charges/Charge
    internal static Finding RatedPressureOfVesselOutOfRange(GaugePressure ratedPressure) =>
        Finding.Error(
            $"rated pressure of the vessel is {ratedPressure}; it must be above 0 bar gauge. Rate the vessel before filling it.");

    internal static Finding FillPressureVesselIsRated(GaugePressure pressure, GaugePressure ratedPressure) =>
        Finding.Error($"fill pressure is {pressure}; the vessel is rated for {ratedPressure}. Fill the vessel to its rating or less.");

    internal static Finding FillPressureOutOfRange(GaugePressure pressure, GaugePressure ratedPressure) =>
        Finding.Error(
            $"fill pressure is {pressure}; it must be 0.1 bar gauge to the rated {ratedPressure}. Without pressure no water leaves.");

    internal static Finding FillPressureAboveRange(GaugePressure pressure) =>
        Finding.Error(
            $"fill pressure is {pressure}; it must be 0.1 bar gauge to 300 bar gauge: no vessel here is rated above. Check its unit.");
}
