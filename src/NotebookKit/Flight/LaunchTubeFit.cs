using NotebookKit.Propulsion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight;

/// <summary>Whether a launch tube fits a vessel and its nozzle.</summary>
internal static class LaunchTubeFit
{
    public static IReadOnlyList<Finding> Check(LaunchTube tube, Nozzle nozzle, Charge charge)
    {
        List<Finding> found = [.. tube.Validate()];
        if (tube.Diameter > nozzle.Throat)
            found.Add(Finding.Error($"launch tube is {tube.Diameter.Show(4)} wide; it has to pass the nozzle's throat of {nozzle.Throat.Show(4)}."));
        if (tube.Displaced - tube.Hollow >= charge.GasSpace)
            found.Add(Finding.Error($"launch tube takes {tube.Displaced.Show()} of the vessel; only {charge.GasSpace.Show()} is left to gas. Use a shorter tube or less water."));
        return found;
    }
}
