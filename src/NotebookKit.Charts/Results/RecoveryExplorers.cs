using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of coming down: <c>canopy.Explore(mass, height)</c>.</summary>
public static class RecoveryExplorers
{
    private const double StrongestMps = 12;

    /// <summary>
    /// Canopy, wind and height of opening to drag, the way down to watch: the diameter from half to twice that of the canopy, wind from
    /// calm to 12 m/s on a mast of
    /// ten metres, the height from half to one and a half times. Descent at the low end of the canopy's drag.
    /// </summary>
    /// <param name="canopy">The canopy to start from.</param>
    /// <param name="mass">Mass that hangs from the canopy; 10 g to 500 kg.</param>
    /// <param name="from">Height of opening to start from; 10 m to 10 km.</param>
    /// <param name="wind">Wind on the mast to start from; 0 to 12 m/s, 4 m/s where none is given.</param>
    /// <exception cref="InvalidDesignException">The canopy can't be computed, or every setting is refused.</exception>
    /// <exception cref="OutOfRangeException">The height or the wind is outside.</exception>
    public static Explorer Explore(this Canopy canopy, Mass mass, Length from, Speed? wind = null)
    {
        ArgumentNullException.ThrowIfNull(canopy);
        InvalidDesignException.ThrowIfAny("Canopy", canopy.Validate());
        var height = new ValidRange<Length>(10.Metres(), 10_000.Metres()).Check(from, "height of opening",
            "Give the height above ground.").Meters;
        var start = new ValidRange<Speed>(Speed.Zero, StrongestMps.MetresPerSecond()).Check(wind ?? 4.MetresPerSecond(),
            "wind on the mast", "Nobody should fly in more.").MetersPerSecond;
        var diameter = canopy.NominalDiameter.Meters;
        ExplorerParameter[] parameters =
        [
            new("Canopy diameter", "m", diameter / 2, diameter * 2, 16, diameter),
            new("Wind at 10 m", "m/s", 0, StrongestMps, 9, start),
            new("Height of opening", "m", height / 2, height * 1.5, 9, height),
        ];
        ExplorerNumber[] numbers = [new("Descent speed", "m/s"), new("Energy at landing", "J"), new("Time under canopy", "s"),
            new("Drift", "m")];
        return Explorer.Build(
            "Canopy, wind and height", new Axis("Distance downwind", "m"), new Axis("Height above ground", "m"), parameters, numbers,
            s => DescentSetting.Answer(canopy, mass, s)) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"{mass.Show()} under one canopy of its type; wind by the power law over open land; drift at constant descent speed.",
        };
    }
}
