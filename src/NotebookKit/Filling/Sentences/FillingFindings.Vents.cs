using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/Vents/Vent
    internal static Finding PressureAtStartOutOfRange(GaugePressure from, GaugePressure safePressure, GaugePressure highest,
        bool isOwn) =>
        Finding.Error(
            $"The pressure at the start is {from}; it must be above the safe {safePressure} and no more than {highest}"
            + (isOwn && from > highest
                ? "; only a measurement that others published is computed to 700 bar gauge: name it by Trace."
                : "."));

    internal static Finding PositionOfVentUnknown(string port, IEnumerable<string> names) =>
        Finding.Error($"position of the vent is {port}; it must be one of {string.Join(", ", names)}.");

    // Filling/Restrictors/PortPlace
    internal static Finding StanceUnknown(string stance, IEnumerable<string> names) =>
        Finding.Error($"stance of the vessel is {stance}; it must be one of {string.Join(", ", names)}.");

    internal static Finding PortAndPlaceDiffer(string port, bool saidUnderWater) =>
        Finding.Error($"The {port} is said to lie {(saidUnderWater ? "under" : "above")} water, and by its place it lies "
            + $"{(saidUnderWater ? "above" : "under")} it. Give the place alone, or measure where the {port} lies.");

    internal static Finding VesselHoldsAboveRatedPressure(GaugePressure from, GaugePressure ratedPressure) =>
        Finding.Warning($"The vessel holds {from}, above its rated pressure of {ratedPressure}: vent the vessel from afar and retire it.");

    // Filling/Vents/VentResult
    internal static Finding VentLiesUnderWater(string times) =>
        Finding.Warning($"The vent lies under water. {times}. Keep everybody out of the line of the jet.");

    internal static Finding PositionOfVentIsNotGiven(string times) =>
        Finding.Warning(
            $"The vessel holds water, and where the vent lies isn't given. If the vent lies under water, {times}. The longer time "
            + "counts; give the vent's position to narrow it.");

    internal static Finding WaterStaysInVessel(GaugePressure safePressure, Volume waterLeft) =>
        Finding.Warning(
            $"The vessel comes to {safePressure} with {waterLeft.Show()} of water still inside: drain the rest with the vent open.");

    internal static Finding WaterFlowOfRestrictorUnknown() =>
        Finding.Warning(
            "The water flow of this restrictor isn't known from its gas flow: half of its area is assumed, and a friction "
            + "factor of at least 0.05 in a hose; neither value has a source. Time one vent with water at low pressure and "
            + "compare.");

    internal static Finding LeaveVentOpen(GaugePressure safePressure, GaugePressure returnsTo) =>
        Finding.Warning(
            $"Leave the vent open. If the vent is shut when the gauge reads {safePressure}, the cold gas that is left warms "
            + $"up and raises the pressure to up to {returnsTo}.");

    // Filling/Vents/WaterDrain
    internal static Finding StartBelowSafePressure(GaugePressure from, GaugePressure stopAt) =>
        Finding.Error(
            $"The pressure at the start is {from}; it must be above {stopAt}, the pressure at which the computation stops; "
            + "below that no pressure drives the water out.");

    // Filling/Vents/WaterDrainResult
    internal static Finding GasIsSpentWithWaterLeft(GaugePressure pressureThen, Volume waterLeft) =>
        Finding.Warning(
            $"The gas is down to {pressureThen} with {waterLeft.Show()} of water still in the vessel: the gas drives no "
            + "more water out.");
}
