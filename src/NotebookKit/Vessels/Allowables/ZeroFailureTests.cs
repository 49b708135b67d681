using MathNet.Numerics.Distributions;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>What tests without a failure show, and what they don't. One passed proof shows very little.</summary>
/// <remarks>
/// Two conventions go round: the classical one, C = 1 − Rⁿ, and Bayes with a uniform prior, C = 1 − Rⁿ⁺¹, which is one test kinder. Both
/// are here under their names. Source: O'Connor and Kleyner, Practical Reliability Engineering (success-run theorem, unverified);
/// Abernethy, The New Weibull Handbook (tests at more than the service load).
/// </remarks>
public static class ZeroFailureTests
{
    private static readonly ValidRange<double> Share = new(0.001, 0.999999);

    /// <summary>Tests without a failure that show a reliability: ln(1 − C)/ln R, rounded up; classical. Source: success-run
    /// theorem.</summary>
    /// <param name="reliability">Reliability to show [-]; 0.001 to 0.999999.</param>
    /// <param name="confidence">Confidence [-]; 0.001 to 0.999999.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static int Needed(double reliability, double confidence)
    {
        Share.Check(reliability, "reliability", "0.90 is nine vessels in ten.");
        Share.Check(confidence, "confidence", "0.95 is usual.");
        // A hair less, so that an exact whole number isn't rounded up by the last bit.
        return (int)Math.Ceiling(Math.Log(1 - confidence) / Math.Log(reliability) - 1e-9);
    }

    /// <summary>Reliability that passes show, classical: (1 − C)^(1/n) [-]. Source: success-run theorem.</summary>
    /// <param name="passes">Tests passed, none failed; 1 to 1 000 000.</param>
    /// <param name="confidence">Confidence [-]; 0.001 to 0.999999.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double Shown(int passes, double confidence)
        => Math.Pow(1 - Share.Check(confidence, "confidence", "0.95 is usual."), 1.0 / Passes(passes));

    /// <summary>Reliability that passes show, Bayes with a uniform prior: (1 − C)^(1/(n + 1)) [-]. Source: success-run theorem with Beta(1,
    /// 1).</summary>
    /// <param name="passes">Tests passed, none failed; 1 to 1 000 000.</param>
    /// <param name="confidence">Confidence [-]; 0.001 to 0.999999.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double ShownByBayes(int passes, double confidence)
        => Math.Pow(1 - Share.Check(confidence, "confidence", "0.95 is usual."), 1.0 / (Passes(passes) + 1));

    /// <summary>Expected reliability after passes, Bayes with a uniform prior: (n + 1)/(n + 2) [-]. Source: Laplace's rule of
    /// succession.</summary>
    /// <param name="passes">Tests passed, none failed; 1 to 1 000 000.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public static double ExpectedByBayes(int passes) => (Passes(passes) + 1.0) / (passes + 2.0);

    /// <summary>Probability that the reliability is above a value, Bayes with a uniform prior: 1 − Rⁿ⁺¹ [-]. Source: Beta(n + 1,
    /// 1).</summary>
    /// <param name="passes">Tests passed, none failed; 1 to 1 000 000.</param>
    /// <param name="reliability">Reliability [-]; 0.001 to 0.999999.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double ProbabilityAbove(int passes, double reliability) =>
        1 - Beta.CDF(Passes(passes) + 1, 1, Share.Check(reliability, "reliability", "0.90 is nine vessels in ten."));

    /// <summary>
    /// Reliability at the service pressure that proofs at more than it show: (1 − C)^(1/(n·k^β)) [-]. Holds only where the shape is known
    /// from bursts and the proof does no damage. Source: Abernethy, The New Weibull Handbook (Weibayes).
    /// </summary>
    /// <param name="passes">Proofs passed, none failed; 1 to 1 000 000.</param>
    /// <param name="confidence">Confidence [-]; 0.001 to 0.999999.</param>
    /// <param name="overload">Proof over service pressure [-]; 1 to 3.</param>
    /// <param name="shape">Weibull shape of the burst pressure [-]; 1 to 60.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double ShownByOverload(int passes, double confidence, double overload, double shape)
    {
        new ValidRange<double>(1, 3).Check(overload, "proof over service pressure", "1.25 to 1.67 is usual.");
        new ValidRange<double>(1, 60).Check(shape, "Weibull shape", "10 is 12 %, 20 is 6 % of scatter.");
        return Math.Pow(1 - Share.Check(confidence, "confidence", "0.95 is usual."), 1 / (Passes(passes) * Math.Pow(overload, shape)));
    }

    private static int Passes(int passes) => new ValidRange<int>(1, 1_000_000).Check(passes, "number of passes",
        "Without a test nothing is shown.");
}
