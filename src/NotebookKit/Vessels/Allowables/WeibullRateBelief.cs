using MathNet.Numerics.Distributions;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Vessels.Allowables;

/// <summary>What is believed of a Weibull scale where the shape is known: its rate λ = η^(−β) follows a gamma distribution.</summary>
/// <param name="Shape">Known Weibull shape β [-]; 0.1 to 100.</param>
/// <param name="Failures">How many failures the belief is worth, A [-]; above 0.</param>
/// <param name="Exposure">Sum of the values to the power of the shape, B [the data's unit to the power of the shape]; above 0.</param>
/// <remarks>Source: Martz and Waller, Bayesian Reliability Analysis, 1982 (gamma prior, censored Weibull sample), unverified.</remarks>
public sealed record WeibullRateBelief(double Shape, double Failures, double Exposure)
{
    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (new ValidRange<double>(0.1, 100).Find(Shape, "Weibull shape", "10 is 12 %, 20 is 6 % of scatter.")
            is { } shape) findings.Add(shape);
        if (!(Failures > 0 && Exposure > 0 && double.IsFinite(Failures * Exposure)))
            findings.Add(VesselsFindings.RateBeliefOutOfRange(Failures, Exposure));
        return findings;
    }

    /// <summary>Belief after tests. Source: Martz and Waller 1982: failures add to A, every value to the power of the shape adds to
    /// B.</summary>
    /// <param name="failed">Values at which something failed, each above 0 [one unit for all].</param>
    /// <param name="survived">Values reached without a failure, each above 0 [the same unit].</param>
    /// <exception cref="InvalidDesignException">The belief isn't valid.</exception>
    /// <exception cref="ArgumentException">A value isn't above 0.</exception>
    public WeibullRateBelief Learn(IReadOnlyList<double> failed, IReadOnlyList<double> survived)
    {
        InvalidDesignException.ThrowIfAny("Belief", Validate());
        if (failed.Concat(survived).Any(v => !(v > 0) || !double.IsFinite(v))) throw new
            ArgumentException("A value is 0, below or missing; check the list.", nameof(failed));
        return this with { Failures = Failures + failed.Count, Exposure = Exposure + failed.Concat(survived).Sum(v => Math.Pow(v, Shape)) };
    }

    /// <summary>Chance that the next one holds a value: (B/(B + tᵝ))^A [-]. Source: Martz and Waller 1982.</summary>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    public double Reliability(double value) => Finite.Check(Math.Pow(Exposure / (Exposure + Powered(value)), Failures),
        "reliability", "");

    /// <summary>Reliability at the mean rate, which leaves out what isn't known of it [-]. Source: definition of the
    /// distribution.</summary>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    public double ReliabilityAtMeanRate(double value) => Finite.Check(Math.Exp(-Failures / Exposure * Powered(value)),
        "reliability", "");

    /// <summary>Reliability that the true one exceeds with a confidence [-]. Source: quantile of the gamma distribution.</summary>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    /// <param name="confidence">Confidence [-]; 0.001 to 0.9999.</param>
    /// <exception cref="OutOfRangeException">The confidence is out of range.</exception>
    public double ReliabilityAtLeast(double value, double confidence) =>
        Math.Exp(-Gamma.InvCDF(Failures, Exposure, new ValidRange<double>(0.001, 0.9999).Check(confidence, "confidence",
            "0.95 is usual.")) * Powered(value));

    private double Powered(double value)
    {
        InvalidDesignException.ThrowIfAny("Belief", Validate());
        return Math.Pow(new ValidRange<double>(0, double.MaxValue).Check(value, "value", "A life or a load is 0 or above."), Shape);
    }
}
