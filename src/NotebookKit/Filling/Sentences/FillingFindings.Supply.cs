using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/Supply/LaunchBudget
    internal static Finding NoCylinder() => Finding.Error("There is no cylinder; give at least one.");

    internal static Finding TargetOfLaunchesOutOfRange(GaugePressure target, GaugePressure ratedPressure) =>
        Finding.Error($"The target is {target}; it must be above 0 and no more than the vessel's rated pressure of {ratedPressure}.");

    internal static Finding OrderOfCylindersUnknown(string order, IEnumerable<string> names) =>
        Finding.Error($"order of the cylinders is {order}; it must be one of {string.Join(", ", names)}.");

    // Filling/Supply/LaunchBudgetResult
    internal static Finding NoLaunchIsPossible(GaugePressure target, Pressure margin) =>
        Finding.Warning(
            $"No launch is possible: no cylinder reaches {target} with {margin.Show()} to spare. Use a fuller cylinder or a "
            + "lower target.");

    internal static Finding CountingOfLaunchesStopped(int maximumLaunches) =>
        Finding.Note($"Counting stopped at {maximumLaunches} launches; the cylinders give more.");

    internal static Finding IdealGasSumPromisesLaunches(int launchesIdeal) =>
        Finding.Note($"The ideal-gas law would give {launchesIdeal} launches; above 100 bar a cylinder holds less air than that law says.");

    internal static Finding OtherOrderGivesMoreLaunches(int launchesOtherwise) =>
        Finding.Note($"In the other order the cylinders give {launchesOtherwise} launches.");

    // Filling/Supply/SupplyTrace
    internal static Finding SupplyTraceUnitRefused(string time, string pressure) =>
        Finding.Error($"The measured supply is in {time} and {pressure}; it must be in s and bar gauge. Read the log with its units.");

    internal static Finding SupplyTraceTooShort(int times, int pressures) =>
        Finding.Error($"The measured supply has {times} times and {pressures} pressures; it must have as many of both, two at the least.");

    internal static Finding SupplyTraceClockDoesNotRise(double firstSeconds) =>
        Finding.Error($"The clock of the measured supply begins at {Digits.Round(firstSeconds)} s; it must begin at 0 s, when the valve "
            + "opens, and rise from reading to reading. Cut and sort the log.");

    // Filling/Fills/PadFill
    internal static Finding MeasuredSupplyStandsAlone() =>
        Finding.Error("The supply is given as measured and as a cylinder or a rise of the regulator; give one of them.");

    internal static Finding MeasuredSupplyAboveSupply(GaugePressure measured, GaugePressure supply) =>
        Finding.Error($"The measured supply goes up to {measured}; it must stay at or below the supply pressure of {supply}. Raise the "
            + "supply pressure to the highest reading.");
}
