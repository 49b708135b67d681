using NotebookKit.Clearance.Cards;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Recovery;

namespace NotebookKit.Clearance;

/// <summary>What is done with a vehicle once its flight is to be decided.</summary>
public static class ClearanceVerbs
{
    /// <summary>The same vehicle on a proved vessel: its chamber is that of the vessel, its charge stays as it was.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="vessel">The vessel as proved.</param>
    public static Vehicle On(this Vehicle vehicle, ProvedVessel vessel)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(vessel);
        return vehicle with { Charge = vehicle.Charge with { Chamber = vessel.Chamber } };
    }

    /// <summary>The page for the range safety officer. Source: the evidence handed over; flights in three degrees of freedom.</summary>
    /// <param name="vehicle">What flies, on its proved vessel.</param>
    /// <param name="site">Where, with wind, field and ceiling.</param>
    /// <param name="evidence">What stands behind it.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed; carries all findings.</exception>
    public static FlightCard Card(this Vehicle vehicle, LaunchSite site, FlightEvidence evidence)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(evidence);
        return new(vehicle, site, evidence);
    }

    /// <summary>The page for the range safety officer, for two stages. Source: the evidence handed over; flights in three degrees of
    /// freedom.</summary>
    /// <param name="vehicle">What flies, each stage on its proved vessel.</param>
    /// <param name="site">Where, with wind, field and ceiling.</param>
    /// <param name="evidence">What stands behind it.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed; carries all findings.</exception>
    public static TwoStageFlightCard Card(this TwoStageVehicle vehicle, LaunchSite site, TwoStageEvidence evidence)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(evidence);
        return new(vehicle, site, evidence);
    }

    /// <summary>How much wind the vehicle may have at the rail, and what sets it. Source: see the result's model card.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it flies, with its field.</param>
    /// <param name="gear">The recovery gear, judged; without it the opening load sets no limit, and the result says so.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be flown; carries all findings.</exception>
    /// <exception cref="InvalidOperationException">The flight has no answer.</exception>
    public static WindLimits WindLimits(this Vehicle vehicle, LaunchSite site, RecoveryCheck? gear = null)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return WindLimitSearch.Of(vehicle, site, vehicle.Fly(site), gear);
    }

    /// <summary>The stand-off at the pad for this vehicle as charged. Source: ASME PCC-2, Appendices 501-II and 501-III.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be flown; carries all findings.</exception>
    public static LaunchStandOff StandOff(this Vehicle vehicle, LaunchSite site) => LaunchStandOff.For(vehicle, site);

    /// <summary>The stand-off at the pad for two stages as charged. Source: ASME PCC-2, Appendices 501-II and 501-III.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be flown; carries all findings.</exception>
    public static LaunchStandOff StandOff(this TwoStageVehicle vehicle, LaunchSite site) => LaunchStandOff.For(vehicle, site);
}
