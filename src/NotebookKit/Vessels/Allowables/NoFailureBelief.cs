using MathNet.Numerics.Distributions;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>What may still be believed of a chance or a rate of failure where nothing has failed. Never 0.</summary>
/// <remarks>Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, §2.4 (beta, binomial), §2.6 (gamma, Poisson), §2.8
/// (Jeffreys).</remarks>
public static class NoFailureBelief
{
    private static readonly ValidRange<double> Confidences = new(0.001, 0.9999);

    /// <summary>Expected chance of failure [-]. Source: mean of Beta(a, n + a).</summary>
    /// <param name="passes">Tests passed, none failed; 0 to 1 000 000.</param>
    /// <param name="prior">What was believed before.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public static double ExpectedChance(int passes, NoFailurePrior prior = NoFailurePrior.Jeffreys)
        => Half(prior) / (Passes(passes) + 2 * Half(prior));

    /// <summary>Chance of failure that the true one doesn't exceed with a confidence [-]. Source: quantile of Beta(a, n + a).</summary>
    /// <param name="passes">Tests passed, none failed; 0 to 1 000 000.</param>
    /// <param name="confidence">Confidence [-]; 0.001 to 0.9999.</param>
    /// <param name="prior">What was believed before.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double ChanceAtMost(int passes, double confidence, NoFailurePrior prior = NoFailurePrior.Jeffreys) =>
        Beta.InvCDF(Half(prior), Passes(passes) + Half(prior), Confidences.Check(confidence, "confidence", "0.95 is usual."));

    /// <summary>Chance that the next tests all pass [-]. Source: beta-binomial with no failure, ratio of beta functions.</summary>
    /// <param name="passes">Tests passed, none failed; 0 to 1 000 000.</param>
    /// <param name="next">Tests to come; 1 to 10 000.</param>
    /// <param name="prior">What was believed before.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double AllPass(int passes, int next, NoFailurePrior prior = NoFailurePrior.Uniform)
    {
        new ValidRange<int>(1, 10_000).Check(next, "number of tests to come", "Ask for one at least.");
        double held = Passes(passes) + Half(prior), all = held + Half(prior), product = 1;
        for (var i = 0; i < next; i++) product *= (held + i) / (all + i);
        return product;
    }

    /// <summary>Rate of events that the true one doesn't exceed with a confidence, where none has come [one over the unit of exposure].
    /// Source: quantile of Gamma(a, exposure).</summary>
    /// <param name="exposure">Exposure without an event, above 0 [hours, fills, flights].</param>
    /// <param name="confidence">Confidence [-]; 0.001 to 0.9999.</param>
    /// <param name="prior">What was believed before.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double RateAtMost(double exposure, double confidence, NoFailurePrior prior = NoFailurePrior.Jeffreys) =>
        Gamma.InvCDF(
            Half(prior), new ValidRange<double>(1e-9, 1e12).Check(exposure, "exposure", "Without any exposure nothing is shown."),
            Confidences.Check(confidence, "confidence", "0.95 is usual."));

    private static double Half(NoFailurePrior prior) => prior == NoFailurePrior.Jeffreys ? 0.5 : 1;

    private static int Passes(int passes) => new ValidRange<int>(0, 1_000_000).Check(passes, "number of passes",
        "Count the tests that were passed.");
}
