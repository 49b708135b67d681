using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

/// <summary>The sentences of flight's findings, in one place.</summary>
internal static partial class FlightFindings
{
    // Flight/Design/Airframe
    internal static Finding VesselLiesOutsideBody(Length tip, Length nozzleEndAt, Length length) =>
        Finding.Error(
            $"the vessel runs from {tip.Show()} to {nozzleEndAt.Show()} aft of the tip; it must lie in the body, 0 to "
            + $"{length.Show()}. Check its volume, bore and nozzle end.");

    internal static Finding VesselBoreWiderThanBody(Length bore) =>
        Finding.Error($"the vessel's bore is {bore.Show()}, wider than the body. Check which of the two is in millimetres.");

    // Flight/Design/LaunchTubeFit
    internal static Finding LaunchTubeTooWide(Length diameter, Length throat) =>
        Finding.Error(
            $"launch tube is {diameter.Show(4)} wide; it must fit through the nozzle's throat of {throat.Show(4)}. Use a "
            + "narrower tube or a wider nozzle.");

    internal static Finding StrokeOfLaunchTubeTooLong(Length stroke, Volume volume, Length bore, Length longest) =>
        Finding.Error(
            $"stroke of the launch tube is {stroke.Show(4)}; the vessel of {volume.Show()} and {bore.Show()} bore is at most some "
            + $"{longest.Show()} long inside. Use a shorter tube.");

    internal static Finding LaunchTubeLeavesTooLittleGas(Volume displaced, Volume gasSpace) =>
        Finding.Error(
            $"launch tube takes {displaced.Show()} of the vessel; only {gasSpace.Show()} is left for gas. Use a shorter "
            + "tube or less water.");

    // Flight/Design/MassBudget
    internal static Finding MassBudgetIsEmpty() =>
        Finding.Error("the mass budget is empty; the budget needs at least one part. Begin with the vessel.");

    internal static Finding PartNameIsNotUnique(int twiceCount, string twiceKey) =>
        Finding.Warning($"{twiceCount} parts are called \"{twiceKey}\"; give each part its own name, so that each weighing has one line.");

    // Flight/Design/MassPart
    internal static Finding PartMassOutOfRange(string name, Mass mass) =>
        Finding.Error($"{name}: mass is {mass.Show()}; it must be above 0 to 50 kg. Leave out a part that weighs nothing.");

    // Flight/Design/Vehicle
    internal static Finding VehicleHasNoName() =>
        Finding.Error("the vehicle has no name; a flight belongs to one vehicle, so give the name that is marked on the vehicle.");

    internal static Finding NozzleThroatWiderThanBase(Length throat) =>
        Finding.Error(
            $"nozzle throat is {throat.Show(4)}; it must be at most the base of the body. Check which of the two is in millimetres.");

    internal static Finding VehicleHasNoCanopy() =>
        Finding.Warning("the vehicle has no canopy and will fall without one; give the vehicle a canopy, or state Deployment.None.");
}
