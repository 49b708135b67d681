using NotebookKit.Numerics.Functions;
using NotebookKit.Provenance;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Damage;

/// <summary>Life under sustained load: power law in stress, Weibull in time.</summary>
/// <param name="Parameters">Exponent, shape and reference time with their source.</param>
/// <remarks>
/// R = exp(−H^β) with H = Σ SR^ρ t/t_ref. Source: Phoenix, Murthy and Thesken, NASA papers on stress rupture (unverified: confirm before
/// relying on them).
/// </remarks>
public sealed record StressRupture(StressRuptureParameters Parameters)
{
    private static readonly ValidRange<double> Wanted = new(0.5, 0.999999999);

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => Parameters.Validate();

    /// <summary>Chance of having broken after all the holds [-]. Source: as the type.</summary>
    /// <param name="holds">Loads in the order they were held.</param>
    /// <exception cref="InvalidDesignException">A parameter or a hold is out of range.</exception>
    public double FailureChance(IReadOnlyList<LoadHold> holds) => -NearZero.ExpLessOne(-Math.Pow(Exposure(holds), Parameters.Shape));

    /// <summary>Chance of being whole after all the holds, as seen before the first [-]. Source: as the type.</summary>
    /// <param name="holds">Loads in the order they were held.</param>
    /// <exception cref="InvalidDesignException">A parameter or a hold is out of range.</exception>
    public double Reliability(IReadOnlyList<LoadHold> holds) => Math.Exp(-Math.Pow(Exposure(holds), Parameters.Shape));

    /// <summary>
    /// Chance of being whole after later holds, given that the earlier ones were survived [-]: exp(−H₁^β + H₀^β). With β above 1 a proof
    /// only ages the vessel in this model. Source: as the type.
    /// </summary>
    /// <param name="survived">Loads that were survived, a proof for instance.</param>
    /// <param name="later">Loads that follow.</param>
    /// <exception cref="InvalidDesignException">A parameter or a hold is out of range.</exception>
    public double ReliabilityGiven(IReadOnlyList<LoadHold> survived, IReadOnlyList<LoadHold> later)
    {
        double before = Exposure(survived), after = before + Exposure(later);
        return Math.Exp(Math.Pow(before, Parameters.Shape) - Math.Pow(after, Parameters.Shape));
    }

    /// <summary>Time under a load until the reliability has fallen to a value, by the formula alone. Source: as the type.</summary>
    /// <param name="stress">Stress over the characteristic short-time strength; 0.1 to 100 %.</param>
    /// <param name="reliability">Reliability wanted at the end [-]; 0.5 to 0.999999999.</param>
    /// <exception cref="InvalidDesignException">A parameter is out of range.</exception>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Duration TimeTo(Ratio stress, double reliability)
    {
        Check();
        Wanted.Check(reliability, "reliability", "0.999 is one in a thousand broken.");
        var hours = Math.Pow(-Math.Log(reliability), 1 / Parameters.Shape) * Parameters.Reference.Hours / Math.Pow(Stress(stress),
            Parameters.Exponent);
        return Duration.FromHours(new ValidRange<double>(0, 1e15).Check(hours, "time under load in h",
            "The load is too small for this law; give a larger one."));
    }

    /// <summary>
    /// Time at one load that uses up as much life as a time at another: t₁ (s₁/s₂)^ρ. Without a published source it is never less than the
    /// time itself. Source: as the type.
    /// </summary>
    /// <param name="time">Time that was held; 0 to 200 years.</param>
    /// <param name="held">Stress it was held at, over strength; 0.1 to 100 %.</param>
    /// <param name="reference">Stress it is counted at, over strength; 0.1 to 100 %.</param>
    /// <exception cref="InvalidDesignException">A parameter is out of range.</exception>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Duration Equivalent(Duration time, Ratio held, Ratio reference)
    {
        Check();
        new ValidRange<double>(0, 200 * 8766).Check(time.Hours, "time under load in h", "Check its unit.");
        var factor = Math.Pow(Stress(held) / Stress(reference), Parameters.Exponent);
        return Duration.FromHours(time.Hours * (Parameters.IsPublished ? factor : Math.Max(1, factor)));
    }

    /// <summary>The life to count on: the formula's, and without a published source no more than the limit. Source: as the type.</summary>
    /// <param name="stress">Stress over the characteristic short-time strength; 0.1 to 100 %.</param>
    /// <param name="reliability">Reliability wanted at the end [-]; 0.5 to 0.999999999.</param>
    /// <param name="atMost">Limit of the time at pressure, as the limits of the vessel's life set it; 0.1 to 100 000 h.</param>
    /// <exception cref="InvalidDesignException">A parameter is out of range.</exception>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public StressRuptureResult Life(Ratio stress, double reliability, Duration atMost)
    {
        new ValidRange<double>(0.1, 1e5).Check(atMost.Hours, "limit of the time at pressure in h",
            "Take it from the limits of the vessel's life.");
        return new(Parameters, stress, reliability, TimeTo(stress, reliability), atMost);
    }

    /// <summary>H, the time under load counted at the characteristic strength over the reference time [-].</summary>
    internal double Exposure(IReadOnlyList<LoadHold> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        InvalidDesignException.ThrowIfAny("Stress rupture", [.. Validate(), .. holds.SelectMany(h => h.Validate())]);
        return holds.Sum(h => Math.Pow(h.Stress.DecimalFractions, Parameters.Exponent) * h.Time.Hours / Parameters.Reference.Hours);
    }

    private void Check() => InvalidDesignException.ThrowIfAny("Stress rupture", Validate());

    private static double Stress(Ratio stress) =>
        LoadHold.StressRange.Check(stress.ToUnit(RatioUnit.Percent), "stress over strength",
            "A vessel loaded to its burst strength has no life.").DecimalFractions;
}
