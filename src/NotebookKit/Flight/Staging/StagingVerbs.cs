using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Staging;

/// <summary>Flies a vehicle of two stages, and says beforehand why it wouldn't fly.</summary>
public static class StagingVerbs
{
    /// <summary>Everything that is wrong with it on a site.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    public static IReadOnlyList<Finding> Validate(this TwoStageVehicle vehicle, LaunchSite site)
        => vehicle.Validate(site, isSixDegrees: false);

    internal static List<Finding> Validate(this TwoStageVehicle vehicle, LaunchSite site, bool isSixDegrees)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(site);
        // The spent booster comes down in three degrees of freedom; on the way up its parts are the stack's.
        List<Finding> all =
        [
            .. vehicle.Booster.Validate(site, startsOnPad: false).Select(f => f with { Message = $"booster: {f.Message}" }),
            .. (isSixDegrees ? vehicle.Sustainer.ValidateSixDegrees(site, startsOnPad: false)
                : vehicle.Sustainer.Validate(site, startsOnPad: false)).Select(f => f with { Message = $"sustainer: {f.Message}" }),
        ];
        if (string.IsNullOrWhiteSpace(vehicle.Name)) all.Add(FlightFindings.VehicleHasNoName());
        if (vehicle.Sustainer.LaunchTube is not null)
            all.Add(FlightFindings.SustainerHasLaunchTube());
        if (vehicle.Booster.Body.Parts.Count < 2)
            all.Add(FlightFindings.BoosterBodyHasTooFewParts(vehicle.Booster.Body.Parts.Count));
        if (all.Exists(f => f.Severity == FindingSeverity.Error)) return all;
        // Warnings of its parts stand above already; what is left is whether both together hop.
        var stack = vehicle.Stack(site);
        var known = stack.Validate(site, startsOnPad: false).Where(f => f.Severity != FindingSeverity.Error).ToHashSet();
        all.AddRange(stack.Validate(site).Where(f => !known.Contains(f)).Select(f => f with { Message = $"stack: {f.Message}" }));
        return all;
    }

    /// <summary>Flies it in three degrees of freedom: the stack to separation, the sustainer and the booster each to the ground. Source:
    /// see the result's model.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public static TwoStageResult Fly(this TwoStageVehicle vehicle, LaunchSite site)
        => new ReadyStages(vehicle, site).Fly();

    /// <summary>Flies stack and sustainer in six degrees of freedom, the spent booster in three. Source: see the result's model.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public static TwoStageResult FlySixDegrees(this TwoStageVehicle vehicle, LaunchSite site)
        => new ReadyStages(vehicle, site, isSixDegrees: true).Fly();
}
