using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ratings;
using UnitsNet;

namespace NotebookKit.Proofing.Plans;

/// <summary>How high a vessel is proved and how much it may stay grown.</summary>
/// <param name="Name">Name of the rule: "club rule".</param>
/// <param name="Factor">Proof pressure over working pressure [-]; 1.1 to 3.</param>
/// <param name="PermanentLimit">Permanent over total expansion that is still accepted; 0 to 20 %.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record ProofRule(string Name, double Factor, Ratio PermanentLimit, Source Source)
{
    /// <summary>Half as much again as the working pressure, 5 % permanent expansion. Source: common practice, no source.</summary>
    public static ProofRule Club { get; } = new("club rule", 1.5, 5.Percent(),
        Source.CommonPractice("proof at 1.5 times working pressure, 5 % permanent expansion"));

    /// <summary>The proof factor of a rating's rule set, with 5 % permanent expansion (as DOT-CFFC and ISO 11119 ask, unverified). Source:
    /// the rule set's.</summary>
    /// <param name="rules">The rule set.</param>
    public static ProofRule Of(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new(rules.Name, rules.Proof, 5.Percent(), rules.Source);
    }

    /// <summary>
    /// The rule that proves a vessel to what its rating asks: the rating's proof pressure is counted from the maximum pressure it is
    /// expected ever to see, so over the working pressure the factor is larger by the overshoot. 5 % permanent expansion. Source: the
    /// rating's rule set.
    /// </summary>
    /// <param name="rating">The rating; a refused one has no proof pressure.</param>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public static ProofRule For(Rating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return new(rating.Rules.Name, rating.ProofPressure / rating.WorkingPressure, Club.PermanentLimit, rating.Rules.Source);
    }

    /// <summary>Proof pressure for a working pressure. Source: the rule's.</summary>
    /// <param name="working">Working pressure; above 0.</param>
    public GaugePressure ProofPressure(GaugePressure working) => working * Factor;

    /// <summary>Whether an expansion is accepted: permanent over total within the limit. Source: the rule's.</summary>
    /// <param name="permanent">Growth that stays after the vessel is depressurised; 0 or above.</param>
    /// <param name="total">Growth at proof pressure; above 0.</param>
    /// <exception cref="OutOfRangeException">The total isn't above zero or the permanent part is larger than it.</exception>
    public bool Accepts(Volume permanent, Volume total)
    {
        new ValidRange<Volume>(Volume.FromMicroliters(1), 1000.CubicMetres()).Check(total, "total expansion",
            "Without expansion nothing can be judged; was the expansion read?");
        new ValidRange<Volume>(-total, total).Check(permanent, "permanent expansion", "It can't be larger than the total.");
        return permanent / total <= PermanentLimit.DecimalFractions;
    }

    /// <summary>Everything wrong with this rule.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<double>(1.1, 3).Find(Factor, "proof factor", "Below 1.1 a proof says nothing; above 3 it's a burst test."),
            new ValidRange<Ratio>(Ratio.Zero, 20.Percent()).Find(PermanentLimit.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                "limit of permanent expansion", "Standards ask 5 % to 10 %."),
        }.OfType<Finding>().ToList();
}
