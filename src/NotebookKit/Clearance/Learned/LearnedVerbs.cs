using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Testing;
using UnitsNet;

namespace NotebookKit.Clearance.Learned;

/// <summary>What new tests change, from the rating to the landing.</summary>
public static class LearnedVerbs
{
    /// <summary>
    /// The whole chain twice, with the earlier and with the later tests of its vessel: rating, fill, apogee, timer, drift. The fill keeps
    /// the distance below the rating that the vehicle has now. Source: see the result's model card.
    /// </summary>
    /// <param name="vehicle">The vehicle, on this vessel.</param>
    /// <param name="vessel">Its vessel.</param>
    /// <param name="site">Where it flies.</param>
    /// <param name="before">The earlier tests.</param>
    /// <param name="after">The later tests, the earlier ones among them; each burst names the part that failed.</param>
    /// <param name="rules">Rule set; the club's own by default.</param>
    /// <param name="below">How far below the rating the vehicle is filled; what it is now unless given. 0 bar up to less than the
    /// rating.</param>
    /// <exception cref="InvalidDesignException">The vessel, a test or the vehicle isn't valid; a later test was left out.</exception>
    public static TestsToLanding FromTests(this Vehicle vehicle, PressureVessel vessel, LaunchSite site, VesselEvidence before,
        VesselEvidence after, RuleSet? rules = null, Pressure? below = null)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(vessel);
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var left = before.Tests.Where(t => !after.Tests.Contains(t)).Select(t => t.Id).Distinct().ToList();
        if (left.Count > 0) 
        {
            throw new InvalidDesignException($"From tests to landing, {vehicle.Name}", [ClearanceFindings.TestsWereLeftOut(left)]);
        }

        var distance = below ?? Pressure.FromBars(Math.Max(0, (vehicle.Charge.Chamber.RatedPressure - vehicle.Charge.Pressure).Bars));
        var prediction = vessel.Burst();
        List<Finding> findings = [];
        var first = Band(before, "earlier");
        var second = Band(after, "later");
        return new(vehicle.Name, after, first, second, findings);

        FlightBand? Band(VesselEvidence tests, string which)
        {
            var rating = prediction.Rate(rules, null, tests);
            var refused = rating.Findings.Where(f => f.Severity == FindingSeverity.Error).ToList();
            if (which == "later") findings.AddRange(rating.Findings);
            if (refused.Count > 0)
            {
                findings.Add(ClearanceFindings.TestsAllowNoRating(which, refused[0].Message));
                return null;
            }

            var limits = new ValidRange<Pressure>(Pressure.FromBars(0), Pressure.FromBars(rating.WorkingPressure.Bar - 1));
            if (limits.Find(distance, $"distance of the fill below the rating by the {which} tests",
                "The vehicle has to be filled to 1 bar gauge at the least.") is { } wrong)
            {
                findings.Add(wrong);
                return null;
            }

            return FlightBand.Of(vehicle, site, rating, distance);
        }
    }
}
