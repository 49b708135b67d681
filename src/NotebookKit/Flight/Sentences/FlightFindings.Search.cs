using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Search/BestFill
    internal static Finding WaterFractionsOfSearchOutOfRange(string waterFractions) =>
        Finding.Error($"water fractions of the search are {waterFractions}; the second must be above the first.");

    internal static Finding ThroatsOfSearchOutOfRange(string throats) =>
        Finding.Error($"throats of the search are {throats}; the second must be above the first.");

    internal static Finding NoWaterFractionLiftsVehicle() =>
        Finding.Error(
            "no water fraction of the search lifts the vehicle within the model's range and empties the vessel before the "
            + "vehicle is down. Use more pressure, a wider nozzle or less mass.");

    // Flight/Search/BestFillResult
    internal static Finding OptimumIsFlat(Ratio flatFrom, Ratio flatTo, string goalName) =>
        Finding.Warning(
            $"the optimum is flat: from {flatFrom.Show(2)} to {flatTo.Show(2)} of water the {goalName} changes by no more "
            + "than 1 %. Choose the fill that is easiest to repeat or that loads the vehicle least.");

    internal static Finding BestWaterFractionIsAtEnd(Ratio waterFraction) =>
        Finding.Warning($"the best water fraction, {waterFraction.Show(3)}, is at the end of the search range: widen the range.");

    internal static Finding BestThroatIsAtEnd(Length throat) =>
        Finding.Warning($"the best throat, {throat.Show(3)}, is at the end of the search range: widen the range.");

    internal static Finding BestThroatIsWidestModelled(Length throat) =>
        Finding.Warning(
            $"the best throat, {throat.Show(3)}, is the maximum that the model covers for this bore: wider throats aren't "
            + "computed, so they may be better.");

    // Flight/Search/FlightMap
    internal static Finding AxesOfMapAreSame(string name) => Finding.Error($"both axes of the map are {name}; they must differ.");

    // Flight/Search/FlightMapResult
    internal static Finding TopOfMapIsFlat(double nearOverApogeeCountPercent) =>
        Finding.Warning(
            $"the maximum of the map is flat: {Digits.Round(nearOverApogeeCountPercent, 2)} % of its cells come within 1 % "
            + "of the highest. Choose the cell that is easiest to repeat.");

    internal static Finding SomeCellsAreEmpty(int refused, int apogeeCount) =>
        Finding.Note(
            $"{refused} of {apogeeCount} cells are empty: above the rated pressure, too heavy to lift, down again with water and "
            + "pressure aboard, or too fast for the drag model.");
}
