using NotebookKit.Provenance;
using NotebookKit.Vessels.Allowables;

namespace NotebookKit.Tests.Published.Vessels;

public class ScatterBeliefTests
{
    private const string Text = "Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, ";

    // Newcomb's times of light, deviations from 24 800 ns.
    private static readonly double[] Newcomb =
    [
        28, 26, 33, 24, 34, -44, 27, 16, 40, -2, 29, 22, 24, 21, 25, 30, 23, 29, 31, 19, 24, 20, 36, 32, 36, 28, 25, 21, 28,
        29, 37, 25, 28, 26, 30, 32, 36, 26, 30, 22, 36, 23, 27, 27, 28, 27, 31, 27, 26, 33, 26, 32, 32, 24, 39, 28, 24, 25,
        32, 25, 29, 27, 28, 29, 16, 23,
    ];

    private static readonly double[] Ten = [212, 224, 231, 238, 240, 247, 251, 256, 262, 270];

    [Fact]
    [PublishedCase("E60a", Text + "§3.2, Newcomb's measurements: mean 26.2, s 10.8, interval 23.6 to 28.8; further digits re-computed")]
    public void Sixty_six_measurements_with_nothing_known_before()
    {
        Assert.Equal(1730, Newcomb.Sum());
        var belief = NormalBelief.Jeffreys.Learn(Newcomb);
        Tolerance.Absolute(26.2121, belief.Mean, 6e-5);
        Tolerance.Absolute(10.7453, belief.Deviation, 6e-5);
        Tolerance.Relative(23.571, belief.MeanQuantile(0.025), 1e-3);
        Tolerance.Relative(28.854, belief.MeanQuantile(0.975), 1e-3);
        Tolerance.Absolute(23.6, belief.MeanQuantile(0.025), 0.1);
        Tolerance.Absolute(28.8, belief.MeanQuantile(0.975), 0.1);
        Tolerance.Relative(4.590, belief.NextQuantile(0.025), 1e-3);
        Tolerance.Relative(47.834, belief.NextQuantile(0.975), 1e-3);
        Tolerance.Relative(9.174, belief.DeviationQuantile(0.025), 1e-3);
        Tolerance.Relative(12.972, belief.DeviationQuantile(0.975), 1e-3);
    }

    [Fact]
    [PublishedCase("E60b", "Student, The probable error of a mean, Biometrika 6, 1908: hours of sleep, odds .9985; further "
        + "digits re-computed")]
    public void Ten_patients_sleep_longer()
    {
        var belief = NormalBelief.Jeffreys.Learn([1.2, 2.4, 1.3, 1.3, 0, 1.0, 1.8, 0.8, 4.6, 1.4]);
        Tolerance.Absolute(1.58, belief.Mean, 1e-9);
        Tolerance.Absolute(1.2300, belief.Deviation, 6e-5);
        Tolerance.Absolute(4.0621, belief.Mean / (belief.Deviation / Math.Sqrt(belief.EquivalentTests)), 6e-5);
        Tolerance.Relative(0.0028329, 2 * belief.MeanBelow(0), 1e-3);
        Tolerance.Absolute(0.99858, 1 - belief.MeanBelow(0), 6e-6);
        Tolerance.Absolute(0.87413, 1 - belief.NextBelow(0), 6e-6);
    }

    [Fact]
    [PublishedCase("E60c", Text + "§3.2 and §3.3: ten bursts, three and one with a prior; computed independently of the library")]
    public void Few_bursts_with_and_without_a_prior()
    {
        var ten = NormalBelief.Jeffreys.Learn(Ten);
        Tolerance.Relative(208.95, ten.NextQuantile(0.05), 1e-3);
        Tolerance.Relative(190.54, ten.NextQuantile(0.01), 1e-3);
        Tolerance.Relative(0.02297, ten.NextBelow(200), 1e-3);
        var prior = new NormalBelief(250, 1, 8, 20);
        var three = prior.Learn([224, 247, 262]);
        Tolerance.Relative(245.75, three.Mean, 1e-3);
        Tolerance.Relative(18.966, three.Deviation, 1e-3);
        Tolerance.Relative(5.5, three.Alpha, 1e-9);
        Tolerance.Relative(1978.4, three.Beta, 1e-3);
        Tolerance.Relative(207.67, three.NextQuantile(0.05), 1e-3);
        Tolerance.Relative(179.80, NormalBelief.Jeffreys.Learn([224, 247, 262]).NextQuantile(0.05), 1e-3);
        var one = prior.Learn([236]);
        Tolerance.Relative(243, one.Mean, 1e-3);
        Tolerance.Relative(19.143, one.Deviation, 1e-3);
        Tolerance.Relative(200.02, one.NextQuantile(0.05), 1e-3);
    }

    [Fact]
    [PublishedCase("E60c", Text + "§3.2: one value has no scatter without a prior")]
    public void One_burst_without_a_prior_is_refused()
    {
        var error = Assert.Throws<InvalidDesignException>(() => NormalBelief.Jeffreys.Learn([236]).NextQuantile(0.05));
        Assert.Contains("needs two values that differ", error.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => new NormalBelief(250, 1, 0, 20).Learn([236]));
        Assert.Throws<ArgumentException>(() => NormalBelief.Jeffreys.Learn([236, double.NaN]));
    }

    // Learning one by one is learning all at once.
    [Fact]
    [PublishedCase("E60c", Text + "§3.3: the conjugate posterior doesn't depend on the order")]
    public void Order_does_not_matter()
    {
        var prior = new NormalBelief(250, 1, 8, 20);
        var atOnce = prior.Learn(Ten);
        var oneByOne = Ten.Aggregate(prior, (b, x) => b.Learn([x]));
        Tolerance.Relative(atOnce.Mean, oneByOne.Mean, 1e-12);
        Tolerance.Relative(atOnce.Deviation, oneByOne.Deviation, 1e-12);
    }

    [Fact]
    [PublishedCase("E60d", "Martz and Waller, Bayesian Reliability Analysis, 1982: gamma prior of a Weibull rate; computed independently "
        + "of the library")]
    public void A_Weibull_rate_with_a_gamma_prior_and_survivors()
    {
        var belief = new WeibullRateBelief(3, 2, 2e6).Learn([60, 80, 110], [95, 120]);
        Assert.Equal(5, belief.Failures);
        Tolerance.Absolute(6_644_375, belief.Exposure, 1e-6);
        Tolerance.Absolute(0.91102, belief.Reliability(50), 6e-6);
        Tolerance.Absolute(0.91022, belief.ReliabilityAtMeanRate(50), 6e-6);
        Tolerance.Absolute(0.84181, belief.ReliabilityAtLeast(50, 0.95), 6e-6);
        Assert.Throws<InvalidDesignException>(() => new WeibullRateBelief(3, 0, 2e6).Learn([60], []));
    }

    [Fact]
    [PublishedCase("E60e", Text + "§2.4, §2.6, §2.8: beta and gamma with no failure; computed independently of the library")]
    public void No_failure_is_not_no_chance()
    {
        Tolerance.Absolute(0.04545, NoFailureBelief.ExpectedChance(10), 6e-6);
        Tolerance.Absolute(0.17077, NoFailureBelief.ChanceAtMost(10, 0.95), 6e-6);
        Tolerance.Absolute(0.23840, NoFailureBelief.ChanceAtMost(10, 0.95, NoFailurePrior.Uniform), 6e-6);
        Tolerance.Absolute(0.04802, NoFailureBelief.RateAtMost(40, 0.95), 6e-6);
        Tolerance.Absolute(0.07489, NoFailureBelief.RateAtMost(40, 0.95, NoFailurePrior.Uniform), 6e-6);
        Tolerance.Absolute(0.54545, NoFailureBelief.AllPass(5, 5), 6e-6);
        Assert.Throws<OutOfRangeException>(() => NoFailureBelief.RateAtMost(0, 0.95));
    }
}
