using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Flights;

/// <summary>Flies a vehicle, and says beforehand why it wouldn't fly.</summary>
public static class FlightVerbs
{
    /// <summary>Everything that is wrong with it, at sea level on a standard day.</summary>
    /// <param name="vehicle">The vehicle.</param>
    public static IReadOnlyList<Finding> Validate(this Vehicle vehicle) => vehicle.Validate(LaunchSite.SeaLevel);

    /// <summary>Everything that is wrong with it on a site.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    public static IReadOnlyList<Finding> Validate(this Vehicle vehicle, LaunchSite site) => vehicle.Validate(site, startsOnPad: true);

    /// <summary>Flies it in three degrees of freedom, from the pad to the ground. Source: see the result's model.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public static FlightResult Fly(this Vehicle vehicle, LaunchSite site) => new ReadyFlight(vehicle, site).Fly();

    /// <summary>Flies it in six degrees of freedom, from the pad to the ground; under the canopy in three. Source: see the result's
    /// model.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public static FlightResult FlySixDegrees(this Vehicle vehicle, LaunchSite site)
    {
        var findings = vehicle.ValidateSixDegrees(site);
        InvalidDesignException.ThrowIfAny(vehicle.Name, findings);
        var rows = new FlightRows();
        var marks = FlightRun.Fly(vehicle.Numbers(site), vehicle.SixDegrees(), FlightAccuracy.RecordedSixDegrees, rows);
        return FlightReport.For(vehicle, site, marks, rows, hasAttitude: true, [.. findings, .. site.WindFindings()]);
    }

    /// <summary>The same for a stage, which doesn't leave the pad by itself.</summary>
    internal static IReadOnlyList<Finding> Validate(this Vehicle vehicle, LaunchSite site, bool startsOnPad)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var all = vehicle.Findings(site);
        if (all.TrueForAll(f => f.Severity != FindingSeverity.Error) && Lift(vehicle, site, startsOnPad) is { } lift) all.Add(lift);
        return all;
    }

    /// <summary>Everything that is wrong with it on a site for six degrees of freedom, which ask for more.</summary>
    internal static IReadOnlyList<Finding> ValidateSixDegrees(this Vehicle vehicle, LaunchSite site, bool startsOnPad = true)
    {
        List<Finding> findings = [.. vehicle.Validate(site, startsOnPad)];
        if (findings.TrueForAll(f => f.Severity != FindingSeverity.Error) && vehicle.MassProperties().RollInertia.KilogramSquareMeters <= 0)
            findings.Add(FlightFindings.RollInertiaIsNotGiven());
        return findings;
    }

    /// <summary>Whether it would not lift at all; of what starts on the pad, also whether it would come down again charged.</summary>
    private static Finding? Lift(Vehicle vehicle, LaunchSite site, bool startsOnPad)
    {
        // An ideal gas is near enough here, and needs no table.
        var setup = new FiringSetup(vehicle.Charge, vehicle.Nozzle, vehicle.Flow, site.Pressure.Pascals, FiringTables.None,
            vehicle.LaunchTube);
        var thrust = setup.FirstThrust;
        var dryKg = vehicle.Parts.State().MassKg;
        var weight = (dryKg + setup.WaterKg + setup.GasKg) * StandardConstants.Gravity;
        return thrust > weight
            ? startsOnPad && ChargedLanding.Ahead(setup, dryKg, out var rest) ? rest.Hop(thrust, weight) : null
            : FlightFindings.ThrustBelowWeight(thrust.Newtons(), weight.Newtons());
    }
}
