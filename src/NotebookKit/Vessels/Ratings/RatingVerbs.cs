using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Testing;

namespace NotebookKit.Vessels.Ratings;

/// <summary>Rates a vessel by a rule set. Source: <see cref="Rating"/>.</summary>
public static class RatingVerbs
{
    /// <summary>What the vessel may be used at under a rule set. Source: see the result's model card.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="rules">Rule set; the club's own factors by default.</param>
    /// <param name="wanted">Working pressure wanted; 0.5 to 300 bar gauge, the highest that the rules allow where none is given.</param>
    /// <param name="evidence">Tests of vessels of the same layup made the same way, oldest first; none where not given. They raise the
    /// rating or lower it, part by part.</param>
    /// <exception cref="InvalidDesignException">The design, the rule set or a test isn't valid.</exception>
    public static Rating Rate(this PressureVessel vessel, RuleSet? rules = null, GaugePressure? wanted = null,
        VesselEvidence? evidence = null) =>
        vessel.Burst().Rate(rules, wanted, evidence);

    /// <summary>
    /// What the vessel may be used at under a rule set. It rests on the B-basis of the vessel by what tests have taught of each part;
    /// before a test has reached the low end of the prediction, on no more than that low end. Source: see the result's model card.
    /// </summary>
    /// <param name="prediction">The burst prediction of the vessel.</param>
    /// <param name="rules">Rule set; the club's own factors by default.</param>
    /// <param name="wanted">Working pressure wanted; 0.5 to 300 bar gauge, the highest that the rules allow where none is given.</param>
    /// <param name="evidence">Tests of vessels of the same layup made the same way, oldest first; none where not given. They raise the
    /// rating or lower it, part by part.</param>
    /// <exception cref="InvalidDesignException">The rule set or a test isn't valid.</exception>
    public static Rating Rate(this BurstPrediction prediction, RuleSet? rules = null, GaugePressure? wanted = null,
        VesselEvidence? evidence = null)
    {
        ArgumentNullException.ThrowIfNull(prediction);
        return Rate(prediction, rules ?? RuleSets.Club, wanted, evidence ?? VesselEvidence.Of(), new());
    }

    /// <summary>The same, with what is known of the tested vessels already.</summary>
    internal static Rating Rate(this PressureVessel vessel, RuleSet rules, GaugePressure? wanted, VesselEvidence evidence,
        TestedVessels known) => Rate(vessel.Burst(), rules, wanted, evidence, known);

    private static Rating Rate(BurstPrediction prediction, RuleSet rules, GaugePressure? wanted, VesselEvidence evidence,
        TestedVessels known)
    {
        InvalidDesignException.ThrowIfAny("Vessel tests", evidence.Validate(known));
        return RatingModel.Rate(prediction, rules, wanted, evidence, known);
    }

    /// <summary>What filling and propulsion need to know of a vessel.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="rating">Its rating.</param>
    /// <exception cref="InvalidDesignException">The rating was refused, or is that of another design.</exception>
    public static Chamber ToChamber(this PressureVessel vessel, Rating rating)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        ArgumentNullException.ThrowIfNull(rating);
        if (!rating.Vessel.Equals(vessel))
        {
            throw new InvalidDesignException(vessel.Name, [VesselsFindings.RatingIsOfAnotherDesign(
                rating.Vessel.Name, rating.Vessel.Volume, vessel.Name)]);
        }

        return Chamber.Predicted(vessel.Volume, vessel.Liner.Bore, rating.WorkingPressure, rating.Rules.Overshoot,
            $"{vessel.Name} by {rating.Rules.Name}");
    }
}
