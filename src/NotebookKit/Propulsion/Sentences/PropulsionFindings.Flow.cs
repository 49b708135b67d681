using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion;

internal static partial class PropulsionFindings
{
    // Propulsion/Flow/FiringTables
    internal static Finding GasHasNoState(double pressurePa, double temperatureK) =>
        Finding.Error(
            $"the gas has no state at {Digits.Round(pressurePa / 1e5)} bar absolute and {Digits.Round(temperatureK - 273.15)} °C; "
            + "an expansion is computed below 10 000 bar, from −123 °C to 727 °C. Check pressure and temperature of the charge.");

    // Propulsion/Flow/FiringChecks
    internal static Finding WaterFlowIsUnsteady() =>
        Finding.Error(
            "water flow is unsteady; a flight along a curved path needs the quasi-steady jet. Choose WaterFlow.QuasiSteady "
            + "or QuasiSteadyWithHead.");

    internal static Finding WallGivesHeatToGas() =>
        Finding.Error("the wall gives heat to the gas; a flight along a curved path leaves that out. Set WallWarming to null.");

    internal static Finding NoEquationOfStateForGas(string gasName) =>
        Finding.Error(
            $"gas is {gasName}; an equation of state is at hand for air, nitrogen and hydrogen only. Choose FlowModel.Plain for "
            + "another gas.");

    internal static Finding MoistAirNeedsAirOverWater(string gasName, Temperature gasTemperature) =>
        Finding.Error($"gas is {gasName} at {gasTemperature.Show()}; moist air is air over water, 0 °C or warmer.");

    internal static Finding JetTooWideForMovingColumn(Length throat, double jet, double widestMovingColumn) =>
        Finding.Error(
            $"nozzle throat is {throat.Show(4)}: its jet has {Digits.Round(jet)} of the bore's area; with head or inertia of the "
            + $"column it must be at most {widestMovingColumn}. Choose WaterFlow.QuasiSteady or a narrower nozzle.");

    internal static Finding NozzleThroatOutOfRange(Length throat, Length bore) =>
        Finding.Error(
            $"nozzle throat is {throat.Show(4)}; it must be below the vessel's bore of {bore.Show(4)}. A nozzle must be "
            + "narrower than the bore. Use a smaller throat.");

    internal static Finding JetOutOfRange(double share, Length throat, Length bore, double maximumJetShare) =>
        Finding.Error(
            $"jet is {Digits.Round(share)} of the vessel's bore in area (nozzle throat {throat.Show(4)}, bore "
            + $"{bore.Show(4)}); it must be at most {maximumJetShare}. With a jet this wide, a vehicle that is light compared "
            + "with its water has no steady jet: the head from its acceleration exceeds the jet's pressure. Use a smaller "
            + "nozzle.");

    // Propulsion/Flow/FlowModel
    internal static Finding PhasesDifferInRealGas(string waterPhase, string airPhase) =>
        Finding.Error(
            $"expansion is {waterPhase} while water leaves and {airPhase} afterwards; the gas must be real in both phases "
            + "or in neither. Start from FlowModel.Real or FlowModel.Plain.");

    internal static Finding MoistAirHoldsOverWaterOnly() =>
        Finding.Error(
            "expansion while gas leaves is that of moist air, which holds over the water only. Choose another for the gas phase.");

    internal static Finding WallHeatNeedsRealGas(string airPhase) =>
        Finding.Error(
            $"the wall gives heat while the expansion is {airPhase}; heat from the wall needs the real gas. Start from "
            + "FlowModel.Real.");

    internal static Finding WaterFlowUnknown(string water, IEnumerable<string> names) =>
        Finding.Error($"water flow is {water}; it must be one of {string.Join(", ", names)}.");

    // Propulsion/Flow/WallWarming
    internal static Finding FilmLawUnknown(string law, IEnumerable<string> names) =>
        Finding.Error($"film law is {law}; it must be one of {string.Join(", ", names)}.");
}
