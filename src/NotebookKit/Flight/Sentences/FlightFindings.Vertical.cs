using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Vertical/VerticalFlight
    internal static Finding ReferenceAreasOfDragDiffer(Area jetOnReferenceArea, Area dragReferenceArea) =>
        Finding.Error(
            $"reference area of the drag under thrust is {jetOnReferenceArea.Show(4)}; it must be that of the drag without jet, "
            + $"{dragReferenceArea.Show(4)}.");

    // Flight/Vertical/VerticalFlightResult
    internal static Finding MachBeyondDragModel(double greatestMach, double maximumMach) =>
        Finding.Error(
            $"the vehicle reaches Mach {Digits.Round(greatestMach)}; the drag model ends at Mach "
            + $"{Digits.Round(maximumMach)}. Heights beyond that Mach number are not given: use less pressure or more mass.");

    internal static Finding MachAboveSteepDragRise(double greatestMach) =>
        Finding.Warning(
            $"the vehicle reaches Mach {Digits.Round(greatestMach)}: above 0.8 its drag rises steeply; a drag coefficient "
            + "for low speed makes the height too large.");

    internal static Finding VehicleStopsOnLaunchTube(Length endHeight, Length stroke, string aboard) =>
        Finding.Error(
            $"the vehicle stops on its launch tube after {endHeight.Show()} of {stroke.Show()}: its thrust has fallen below "
            + $"its weight, with {aboard} still aboard. Use more pressure, a wider or shorter tube, or less mass.");

    internal static Finding DidNotReachEnd(string? failure, string status) =>
        Finding.Error($"the {failure} did not reach its end ({status}); use none of its numbers.");
}
