using NotebookKit.Clearance.Service;
using NotebookKit.Life.Damage;
using NotebookKit.Proofing.Plans;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Uncertainty;
using UnitsNet;

namespace NotebookKit.Clearance;

/// <summary>Both truths about the proof of a design: what it sorts out and what it costs. Source: <see cref="ProofEffect"/>.</summary>
public static class ProofVerbs
{
    // Common practice, no source: from filled to flown or vented.
    private static readonly Duration UsualStand = 15.Minutes();

    /// <summary>What the proof that a rating asks for does for the vessel and costs it; fills are the club's between two proofs. Source:
    /// <see cref="ProofEffect"/>.</summary>
    /// <param name="rating">The rating; it gives proof and fill pressure.</param>
    /// <param name="bursts">Bursts of vessels made to the same design.</param>
    /// <param name="kept">Share of the strength that is left at a fill; 5 to 100 %, none where it isn't known: then no chance of a burst is
    /// given.</param>
    /// <exception cref="InvalidDesignException">The rating was refused, the bursts are of another design, or a value is out of
    /// range.</exception>
    public static ProofEffectResult Effect(this Rating rating, BurstDistribution bursts, Ratio? kept = null)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return Of(rating, bursts, rating.Vessel.Name, rating.IsRated ? rating.ProofPressure : GaugePressure.Zero, rating.WorkingPressure,
            null, kept);
    }

    /// <summary>What the proof that a vessel held does for it and costs it, at what rating and proof let it be filled to. Source:
    /// <see cref="ProofEffect"/>.</summary>
    /// <param name="vessel">The vessel as proved.</param>
    /// <param name="bursts">Bursts of vessels made to the same design.</param>
    /// <param name="kept">Share of the strength that is left at a fill; 5 to 100 %, none where it isn't known: then no chance of a burst is
    /// given.</param>
    /// <exception cref="InvalidDesignException">The bursts are of another design, or a value is out of range.</exception>
    public static ProofEffectResult Effect(this ProvedVessel vessel, BurstDistribution bursts, Ratio? kept = null)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        return Of(vessel.Rating, bursts, $"{vessel.Vessel} {vessel.Serial}", vessel.Held, vessel.Allowed,
            vessel.Record.Plan.Proof.ProofHold, kept);
    }

    private static ProofEffectResult Of(Rating rating, BurstDistribution bursts, string name, GaugePressure proof, GaugePressure fill,
        Duration? hold, Ratio? kept)
    {
        ArgumentNullException.ThrowIfNull(bursts);
        List<Finding> against = [];
        if (!rating.IsRated)
            against.Add(ClearanceFindings.RatingWasRefused(name));
        if (!bursts.Vessel.Equals(rating.Vessel))
            against.Add(ClearanceFindings.BurstsAreThoseOfAnotherDesign(bursts.Vessel.Name, rating.Vessel.Name));
        InvalidDesignException.ThrowIfAny($"Effect of the proof of {name}", against);
        return new ProofEffect(ScreeningByProof.Of(bursts, proof, fill), hold ?? Proof.For(rating).ProofHold,
            LifeLimits.Club.FillsBetweenProofs!.Value, UsualStand) { Vessel = name, Kept = kept }.Evaluate();
    }
}
