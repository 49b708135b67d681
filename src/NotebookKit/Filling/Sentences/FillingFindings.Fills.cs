using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/Fills/FillResult
    internal static Finding JetLeavesLayers(Length inlet, Duration until, Duration end, bool isIgnored) =>
        isIgnored
            ? Finding.Warning(
                $"By the published criterion the jet of {inlet.Show()} stirs the gas for {until.Show()} of {end.Show()} and then leaves it "
                + "in layers, but it is computed as stirring throughout: the gas may be hotter than said. Set Stirring to "
                + "JetStirring.WhileItMixes.")
            : Finding.Note(
                $"By the published criterion the jet of {inlet.Show()} stirs the gas for {until.Show()} of {end.Show()}; after that free "
                + "convection alone is counted, and the gas lies in layers with the hottest on top. A narrower inlet stirs for longer.");

    internal static Finding GaugeFallsAsGasCools(GaugePressure settledPressure, bool isAdiabatic) =>
        Finding.Note(
            $"As the gas cools, the gauge falls to {settledPressure}"
            + (isAdiabatic
                ? ", if the fill is too fast for the wall to take up heat"
                : "")
            + ". That fall is not a leak.");

    internal static Finding SunTakesVesselPastRating(string sun, GaugePressure most, GaugePressure rated) =>
        Finding.Warning(
            $"{sun}: this exceeds the {most} that the rating of {rated} allows for. Shade the vessel, fill to a lower "
            + "pressure, or launch at once; vent from afar if the launch is delayed.");

    internal static Finding SunTakesVesselAboveRated(string sun, GaugePressure rated, GaugePressure most) =>
        Finding.Note(
            $"{sun}: this is above the rated {rated}, within the {most} that the rating allows for. Shade the vessel and "
            + "don't top up while it is warm.");

    internal static Finding GasMayGetTooHot(double hottestDegreesCelsius) =>
        Finding.Warning(
            $"The gas may reach {Digits.Round(hottestDegreesCelsius)} °C; a laminating resin without post-cure withstands "
            + "about 50 °C. Fill more slowly: the wall then cools the gas.");

    // Filling/Fills/FillTiming
    internal static Finding NoRestrictorFillsInTime(double wantedSeconds, string nearest) =>
        Finding.Error(
            $"No restrictor fills in {Digits.Round(wantedSeconds)} s with this regulator, valve and cylinder: {nearest}. "
            + "Choose another time, or leave the valve open.");

    // Filling/Fills/FillWater
    internal static Finding WaterInPortAndLineMovesFirst(string lies, Duration? time, bool isUnsourced, string why) =>
        Finding.Warning(
            $"{lies} water in the port and the line moves first, and the fill takes longer than the time given for gas alone, "
            + (time is { } t
                ? $"by up to {Digits.Round(t.Seconds)} s"
                    + (isUnsourced
                        ? " (by half of the restrictor's gas area, which has no source)"
                        : "")
                : $"by how much can't be computed: {why}")
            + ".");

    internal static Finding WaterRunsBackThroughPort(bool? hasCheckValve) =>
        Finding.Warning(
            "Water runs back through a port under water into hose and regulator whenever the supply is below the vessel's pressure"
            + (hasCheckValve is null
                ? ", and whether a check valve is fitted isn't given"
                : "")
            + ". Fit a check valve between the hose and the vessel, and bring the supply above the vessel's pressure before the valve "
            + "opens.");

    // Filling/Fills/PadFill
    internal static Finding GoalUnknown(string goal, IEnumerable<string> names) =>
        Finding.Error($"goal is {goal}; it must be one of {string.Join(", ", names)}.");

    internal static Finding HeatToWallUnknown(string heat, IEnumerable<string> names) =>
        Finding.Error($"heat to the wall is {heat}; it must be one of {string.Join(", ", names)}.");

    internal static Finding PropertiesOfGasUnknown(string properties, IEnumerable<string> names) =>
        Finding.Error($"properties of the gas are {properties}; they must be one of {string.Join(", ", names)}.");

    internal static Finding PositionOfFillingPortUnknown(string port, IEnumerable<string> names) =>
        Finding.Error($"position of the filling port is {port}; it must be one of {string.Join(", ", names)}.");

    internal static Finding NoEquationOfState(string gas) =>
        Finding.Error($"There is no equation of state for {gas}; compute this gas as an ideal gas.");

    internal static Finding ViscosityAndConductivityUnknown(string gas) =>
        Finding.Error($"Viscosity and conductivity of {gas} aren't known here; give the wall a fixed film coefficient.");

    internal static Finding TargetBelowStart(GaugePressure target, GaugePressure start) =>
        Finding.Error($"The target is {target}; it must be above the {start} that the vessel already holds.");

    internal static Finding TargetAboveRatedPressure(GaugePressure target, GaugePressure ratedPressure) =>
        Finding.Error(
            $"The target is {target}; it must be no more than the vessel's rated pressure of {ratedPressure}. Lower the "
            + "target or proof-test a stronger vessel.");

    internal static Finding FastFillPassesRatedPressure(GaugePressure target, GaugePressure shut, GaugePressure ratedPressure) =>
        Finding.Error(
            $"To settle at {target} in one fast fill the vessel would have to reach {shut} hot; that pressure must be no "
            + $"more than the vessel's rated pressure of {ratedPressure}. Fill slowly, or fill to the rating, let the gas "
            + "cool and top up.");

    internal static Finding ValveWouldShutAboveSupply(
        GaugePressure shut, GaugePressure supply, bool shutBelowRatedPressure, GaugePressure ratedPressure) =>
        Finding.Error(
            $"The valve would shut at {shut}; the supply gives {supply}, and the vessel's pressure can't exceed the supply. "
            + "Lower the target"
            + (shutBelowRatedPressure
                ? $", or set the regulator higher, at most to the rated {ratedPressure}"
                : "")
            + ".");

    internal static Finding CylinderIsNoFullerThanTarget(string cylinder, GaugePressure target) =>
        Finding.Error($"Cylinder {cylinder} is at or below the target of {target}: use a fuller cylinder.");

    internal static Finding WaterMayFreeze(Temperature temperature) =>
        Finding.Warning(
            $"The vessel stands at {temperature.Show()} with water in it: plain water freezes below 0 °C, and ice blocks "
            + "nozzle, valve and vent. The fill is computed as if the water stayed liquid.");

    internal static Finding RegulatorAboveRatedPressure(
        GaugePressure supply, GaugePressure ratedPressure, GaugePressure target, double reliefFlowGramsPerSecond,
        GaugePressure maximumExpectedPressure) =>
        Finding.Warning(
            $"The regulator is set to {supply}, above the vessel's rated pressure of {ratedPressure}: a valve left open "
            + "exceeds the rating. Set the regulator lower, or fit a relief valve between restrictor and vessel: "
            + (target < ratedPressure ? $"the relief valve must open above {target} and at {ratedPressure} at most, and"
                : $"lower the target first, for a valve that opens at {ratedPressure} at most opens before {target} is reached; the valve")
            + $" must pass the restrictor's flow of {Digits.Round(reliefFlowGramsPerSecond)} g/s before the vessel is at "
            + $"{maximumExpectedPressure}.");
}
