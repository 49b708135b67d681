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
            found.Add(FlightFindings.LaunchTubeTooWide(tube.Diameter, nozzle.Throat));
        // A vessel that narrows to its ends is longer than a cylinder of its bore and volume.
        var longest = (MostTaper * charge.Chamber.Volume.CubicMeters / (Math.PI / 4 * Math.Pow(charge.Chamber.Bore.Meters, 2))).Metres();
        if (tube.Stroke > longest)
            found.Add(FlightFindings.StrokeOfLaunchTubeTooLong(tube.Stroke, charge.Chamber.Volume, charge.Chamber.Bore, longest));
        if (tube.Displaced - tube.Hollow >= charge.GasSpace)
            found.Add(FlightFindings.LaunchTubeLeavesTooLittleGas(tube.Displaced, charge.GasSpace));
        return found;
    }
}
