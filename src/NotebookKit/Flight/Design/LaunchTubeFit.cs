using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Design;

/// <summary>Whether a launch tube fits a vessel and its nozzle.</summary>
internal static class LaunchTubeFit
{
    private const double MostTaper = 1.25;

    public static IReadOnlyList<Finding> Check(LaunchTube tube, Nozzle nozzle, Charge charge)
    {
        List<Finding> found = [.. tube.Validate()];
        if (tube.Diameter > nozzle.Throat)
            found.Add(Finding.Error($"launch tube is {tube.Diameter.Show(4)} wide; it has to pass the nozzle's throat of {nozzle.Throat.Show(4)}."));
        // A vessel that narrows to its ends is longer than a cylinder of its bore and volume.
        var longest = (MostTaper * charge.Chamber.Volume.CubicMeters / (Math.PI / 4 * Math.Pow(charge.Chamber.Bore.Meters, 2))).Metres();
        if (tube.Stroke > longest)
            found.Add(Finding.Error($"stroke of the launch tube is {tube.Stroke.Show(4)}; the vessel of {charge.Chamber.Volume.Show()} and {charge.Chamber.Bore.Show()} bore is at most some {longest.Show()} long inside. Use a shorter tube."));
        if (tube.Displaced - tube.Hollow >= charge.GasSpace)
            found.Add(Finding.Error($"launch tube takes {tube.Displaced.Show()} of the vessel; only {charge.GasSpace.Show()} is left to gas. Use a shorter tube or less water."));
        return found;
    }
}
