using NotebookKit.Charts.Explorers;
using NotebookKit.Flight;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of the way down: <c>canopy.Explore(mass, height)</c>.</summary>
public static class DescentExplorers
{
    private const int Points = 30;
    private const double GroundMetres = 1;

    /// <summary>
    /// Canopy, wind and height of opening to drag, the way down to watch: the diameter from half to twice that of the canopy, wind at 10 m from none to
    /// 12 m/s by the power law over open land, height from a third of the given one to it and a half again.
    /// </summary>
    /// <param name="canopy">The canopy to start from.</param>
    /// <param name="mass">Mass that hangs on it; 10 g to 500 kg.</param>
    /// <param name="height">Height above ground it opens at; 10 m to 10 km.</param>
    /// <exception cref="InvalidDesignException">The canopy can't be computed.</exception>
    /// <exception cref="OutOfRangeException">Mass or height is outside its range.</exception>
    public static Explorer Explore(this Canopy canopy, Mass mass, Length height)
    {
        ArgumentNullException.ThrowIfNull(canopy);
        new ValidRange<Length>(10.Metres(), 10_000.Metres()).Check(height, "height of opening", "Take it from a flight's apogee.");
        _ = canopy.Descend(mass);
        ExplorerParameter[] parameters =
        [
            new("Canopy diameter", "mm", canopy.NominalDiameter.Millimeters / 2, canopy.NominalDiameter.Millimeters * 2, 9, canopy.NominalDiameter.Millimeters) { Logarithmic = true },
            new("Wind at 10 m", "m/s", 0, 12, 5, 4),
            new("Height of opening", "m", height.Meters / 3, height.Meters * 1.5, 7, height.Meters),
        ];
        ExplorerNumber[] numbers = [new("Drift", "m"), new("Time to the ground", "s"), new("Fastest descent", "m/s"), new("Energy at landing", "J")];
        return Explorer.Build("Coming down", new Axis("Distance downwind", "m"), new Axis("Height above ground", "m"), parameters, numbers, s => Answer(canopy, mass, s)) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"{mass.Show()} under the canopy, which is taken to open at once; drift with the slower end of its descent speed, energy with the faster.",
        };
    }

    private static ExplorerState Answer(Canopy canopy, Mass mass, IReadOnlyList<double> setting)
    {
        var trial = canopy with { NominalDiameter = setting[0].Millimetres() };
        if (trial.Validate().FirstOrDefault(f => f.Severity == FindingSeverity.Error) is { } problem) return ExplorerState.Refused(problem.Message);
        var descent = trial.Descend(mass);
        var wind = WindProfile.PowerLaw(setting[1].MetresPerSecond(), 10.Metres());
        var whole = Drift.Under(setting[2].Metres(), descent.Slowest, wind);
        double[] heights = [.. Enumerable.Range(0, Points).Select(i => setting[2] + ((GroundMetres - setting[2]) * i / (Points - 1)))];
        return new ExplorerState
        {
            // Drift from a height to the ground is known in closed form: what is left of it at each height is taken off.
            X = [.. heights.Select(h => whole.Distance.Meters - Drift.Under(h.Metres(), descent.Slowest, wind).Distance.Meters)],
            Y = heights,
            Numbers = [whole.Distance.Meters, whole.Time.Seconds, descent.Fastest.MetersPerSecond, descent.LandingEnergy.Joules],
        };
    }
}
