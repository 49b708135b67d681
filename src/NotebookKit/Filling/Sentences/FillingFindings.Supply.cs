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
}
