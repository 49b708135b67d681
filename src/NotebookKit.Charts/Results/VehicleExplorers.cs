using NotebookKit.Charts.Explorers;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of a whole flight: <c>vehicle.Explore(site)</c>.</summary>
public static class VehicleExplorers
{
    private const int PointsPerPhase = 30;

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
            parameters, numbers, s => Answer(
            vehicle with { Charge = vehicle.Charge with { Pressure = GaugePressure.FromBar(s[0]), WaterFraction = s[1].Percent() } },
            site with { Wind = WindProfile.PowerLaw(s[2].MetresPerSecond(), 10.Metres()), Gusts = null })) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"{vehicle.Name} from {site.Name}, three degrees of freedom, steady wind from the west.",
        };
    }

    private static ExplorerState Answer(Vehicle vehicle, LaunchSite site)
    {
        if (vehicle.Validate(site).FirstOrDefault(f => f.Severity == FindingSeverity.Error)
            is { } problem) return ExplorerState.Refused(problem.Message);
        var flight = vehicle.Fly(site);
        if (flight.Status == ResultStatus.Failed) return ExplorerState.Refused(flight.Findings.FirstOrDefault(f => f.Severity ==
            FindingSeverity.Error)?.Message ?? "The flight could not be computed.");
        var figures = flight.Figures;
        // The canopy changes the way down, the top doesn't: each side of it is sampled at equal shares of its own time.
        var up = CurveSampling.Between(flight.Time, flight.Height, 0, figures.ApogeeTime.Seconds, PointsPerPhase);
        var down = CurveSampling.Between(flight.Time, flight.Height, figures.ApogeeTime.Seconds, figures.LandingTime.Seconds,
            PointsPerPhase);
        return new ExplorerState
        {
            X = [.. up.X, .. down.X],
            Y = [.. up.Y, .. down.Y],
            Numbers =
            [
                figures.Apogee.Meters, figures.ApogeeTime.Seconds, figures.RailExitSpeed.MetersPerSecond,
                    figures.MaximumSpeed.MetersPerSecond, figures.Drift.Meters, figures.LandingTime.Seconds,
            ],
        };
    }
}
