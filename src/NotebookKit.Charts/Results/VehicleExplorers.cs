using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of a whole flight: <c>vehicle.Explore(site)</c>.</summary>
public static class VehicleExplorers
{
    /// <summary>
    /// Pressure, water and wind to drag, height against time from pad to ground to watch: pressure from a third of the rated one up to it,
    /// water from 5 % to 60 %, wind at 10 m from none to 8 m/s by the power law over open land.
    /// </summary>
    /// <param name="vehicle">The vehicle to start from.</param>
    /// <param name="site">Where it flies; its wind is replaced by the one that is dragged.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed.</exception>
    public static Explorer Explore(this Vehicle vehicle, LaunchSite site)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(site);
        InvalidDesignException.ThrowIfAny(vehicle.Name, vehicle.Validate(site));
        var rated = vehicle.Charge.Chamber.RatedPressure.Bar;
        ExplorerParameter[] parameters =
        [
            new("Pressure", "bar gauge", Math.Min(rated / 3, vehicle.Charge.Pressure.Bar * 0.9), rated, 7, vehicle.Charge.Pressure.Bar),
            new("Water fraction", "%", 5, 60, 10, Math.Clamp(vehicle.Charge.WaterFraction.Percent, 5, 60)),
            new("Wind at 10 m", "m/s", 0, 8, 5, 3),
        ];
        ExplorerNumber[] numbers = [new("Apogee", "m"), new("Time of apogee", "s"), new("Speed off the rail", "m/s"),
            new("Maximum speed", "m/s"), new("Drift", "m"), new("Time to the ground", "s")];
        return Explorer.Build($"Height and drift: {vehicle.Name}", new Axis("Time from release", "s"), new Axis("Height above pad", "m"),
            parameters, numbers, s => FlightSetting.Answer(vehicle, site, s)) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"{vehicle.Name} from {site.Name}, three degrees of freedom, steady wind from the west.",
        };
    }
}
