using NotebookKit.Charts.Explorers;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results.Settings;

/// <summary>A whole flight for one setting of its explorer: pressure [bar gauge], water fraction [%], wind at 10 m [m/s].</summary>
internal static class FlightSetting
{
    private const int PointsPerPhase = 30;

    /// <summary>The answer.</summary>
    public static ExplorerState Answer(Vehicle vehicle, LaunchSite site, IReadOnlyList<double> s) => Answer(
        vehicle with { Charge = vehicle.Charge with { Pressure = GaugePressure.FromBar(s[0]), WaterFraction = s[1].Percent() } },
        site with { Wind = WindProfile.PowerLaw(s[2].MetresPerSecond(), 10.Metres()), Gusts = null });

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
