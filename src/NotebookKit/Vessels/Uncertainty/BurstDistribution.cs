using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Bursts of many vessels made to one design, with everything that scatters drawn anew for each.</summary>
/// <remarks>Source: Monte Carlo over the model of <see cref="BurstPrediction"/>; basis values by their definition in MIL-HDBK-17-1F, ch.
/// 8.</remarks>
public sealed record BurstDistribution : Result
{
    private readonly double[] _sorted;
    private readonly byte[] _parts;
    private readonly BurstSampler _sampler;
    private readonly double[] _bursts;

    private BurstDistribution(PressureVessel vessel, EfficiencyBelief belief, ulong seed, BurstPrediction prediction, BurstSampler sampler,
        (double[] Bursts, byte[] Parts) run, double[] low)
    {
        Vessel = vessel;
        Belief = belief;
        Seed = seed;
        Prediction = prediction;
        _sampler = sampler;
        (_bursts, _parts) = run;
        _sorted = [.. _bursts];
        Array.Sort(_sorted);
        Array.Sort(low);
        BBasis = GaugePressure.FromPascals(At(low, 0.10));
        ABasis = GaugePressure.FromPascals(At(low, 0.01));
        Mean = GaugePressure.FromPascals(_sorted.Average());
        Spread = _sorted.StandardDeviation() / Mean.Pascals;
    }

    /// <summary>The vessel.</summary>
    public PressureVessel Vessel { get; }

    /// <summary>What is believed of the fabrication efficiency.</summary>
    public EfficiencyBelief Belief { get; }

    /// <summary>Seed of the random numbers.</summary>
    public ulong Seed { get; }

    /// <summary>The burst at the mean of everything.</summary>
    public BurstPrediction Prediction { get; }

    /// <summary>How many vessels were drawn.</summary>
    public int Samples => _sorted.Length;

    /// <summary>Mean burst of the next vessel.</summary>
    public GaugePressure Mean { get; }

    /// <summary>Coefficient of variation of the next vessel's burst: scatter in making and what isn't known, together [-].</summary>
    public double Spread { get; }

    /// <summary>
    /// B-basis at a low efficiency: the tenth quantile of making's scatter at the efficiency that one in twenty lies below, walls at their
    /// low end. It trusts the model of wall and ends, and no rating rests on it: the rating's own basis doubts them too. Source: definition
    /// in MIL-HDBK-17-1F, ch. 8.
    /// </summary>
    public GaugePressure BBasis { get; }

    /// <summary>A-basis: ninety-nine in a hundred are stronger, the same way. Source: definition in MIL-HDBK-17-1F, ch. 8.</summary>
    public GaugePressure ABasis { get; }

    /// <summary>Every burst, lowest first, for drawing [bar gauge].</summary>
    public Series Bursts => new("Burst pressure", "bar gauge", [.. _sorted.Select(b => b / 1e5)]);

    /// <summary>What drives the scatter, largest first.</summary>
    public IReadOnlyList<BurstDriver> Drivers
    {
        get
        {
            var mean = Mean.Pascals;
            var deviation = Spread * mean;
            return
            [
                .. BurstSampler.Variables.Select((name, v) =>
                {
                    Numerics.WorkRun.Current.ThrowIfStopped();
                    double sum = 0, square = 0, product = 0;
                    for (var i = 0; i < _bursts.Length; i++)
                    {
                        var z = _sampler.Draw(i, v);
                        sum += z;
                        square += z * z;
                        product += z * (_bursts[i] - mean);
                    }

                    var n = _bursts.Length;
                    var scale = Math.Sqrt(square / n - sum / n * (sum / n));
                    var r = deviation > 0 ? product / n / (scale * deviation) : 0;
                    return new BurstDriver(name, r, Ratio.FromPercent(100 * r * r));
                }).OrderByDescending(d => d.Share.Percent),
            ];
        }
    }

    /// <summary>Share of the samples in which each part is the weakest.</summary>
    public IReadOnlyList<(string Part, Ratio Share)> WeakestParts =>
    [
        .. Prediction.Parts.Select((p, i) => (p.Name, Ratio.FromPercent(100.0 * _parts.Count(x => x == i) / _parts.Length)))
            .Where(p => p.Item2.Percent > 0).OrderByDescending(p => p.Item2.Percent),
    ];

    /// <summary>Burst that a share of the vessels lies below. Source: order statistics of the samples.</summary>
    /// <param name="share">Share [-]; 0.0001 to 0.9999.</param>
    /// <exception cref="OutOfRangeException">The share is out of range.</exception>
    public GaugePressure Quantile(double share) =>
        GaugePressure.FromPascals(At(_sorted, new ValidRange<double>(0.0001, 0.9999).Check(share, "share", "0.10 is one in ten.")));

    /// <summary>Probability that the next vessel bursts at or below a pressure. Source: Clopper and Pearson, Biometrika 26, 1934.</summary>
    /// <param name="pressure">Pressure; 0 or above.</param>
    public FailureChance ChanceBelow(GaugePressure pressure)
    {
        var failed = Array.BinarySearch(_sorted, pressure.Pascals);
        if (failed < 0) failed = ~failed;
        while (failed < _sorted.Length && _sorted[failed] <= pressure.Pascals) failed++;
        var atMost = failed >= _sorted.Length ? 1 : Beta.InvCDF(failed + 1, _sorted.Length - failed, 0.95);
        return new FailureChance(pressure, failed, _sorted.Length, atMost);
    }

    /// <inheritdoc/>
    public override string Title => $"Burst distribution, {Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Monte Carlo over the burst prediction",
        [
            "Drawn anew for each vessel: " + string.Join(", ", BurstSampler.Variables) + ".",
            "Factors are lognormal about 1; fibre fraction and angle normal; the wall anywhere between netting of its fibres as laid and "
                + "the laminate answer.",
            "Every material property has its own spread, the same for all plies of one vessel.",
        ],
        "As the burst prediction. Chances rarer than one in a thousand rest on the shape of the assumed distributions.",
        [.. Prediction.Model.Sources, Allowables.AllowableSources.Handbook]);

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [.. Prediction.Findings.Where(f => f.Severity != FindingSeverity.Note)];
            var first = Drivers[0];
            findings.Add(VesselsFindings.LargestShareOfScatter(first.Share.Percent, first.Name));
            findings.AddRange(Prediction.Vessel.OwnValues);
            return findings;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Mean burst", Mean.ToString(), $"spread {Digits.Round(100 * Spread)} %"),
        new("One in ten below", Quantile(0.10).ToString()),
        new("One in a hundred below", Quantile(0.01).ToString()),
        new("B-basis, if the model is right", BBasis.ToString(),
            "nine in ten are stronger, 95 % confidence in the efficiency; no rating rests on it"),
        new("A-basis, if the model is right", ABasis.ToString(), "ninety-nine in a hundred are stronger"),
        .. WeakestParts.Select(p => new ResultLine($"Weakest: {p.Part}", p.Share.Show(2))),
        new("Efficiency", Belief.ToString(), Belief.Name),
        new("Samples", Samples.ToString(System.Globalization.CultureInfo.InvariantCulture),
            $"seed {Seed.ToString(System.Globalization.CultureInfo.InvariantCulture)}"),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Burst of each sample", @"p_i = \min(\text{wall},\ \text{ends})", $"{Samples} samples, seed {Seed}",
            $"{Digits.Round(_sorted[0] / 1e5)} to {Digits.Round(_sorted[^1] / 1e5)} bar", VesselSources.Jones),
        new("Mean and spread", @"\bar p,\ s/\bar p", $"n = {Samples}", $"{Mean}, {Digits.Round(100 * Spread)} %",
            new Source("", "sample mean and standard deviation", null)),
        new("Efficiency for the basis values", @"\eta_{0.05}", Belief.ToString(), Belief.Quantile(0.05).Show(),
            Allowables.AllowableSources.Handbook),
        new("B-basis", @"B = p_{0.10}\,|\,\eta_{0.05}", "the tenth quantile of samples at that efficiency", BBasis.ToString(),
            Allowables.AllowableSources.Handbook),
    ]);

    internal static BurstDistribution Sample(PressureVessel vessel, int samples, ulong seed, EfficiencyBelief? belief, int threads)
    {
        new ValidRange<int>(100, 2_000_000).Check(samples, "number of samples",
            "20 000 is usual; fewer can't show a chance of one in a hundred.");
        var prediction = vessel.Burst();
        belief ??= EfficiencyBelief.Of(vessel.Fabrication);
        var sampler = new BurstSampler(vessel, prediction.Layup, seed);
        var run = sampler.Run(samples, belief.At, lowEnd: false, threads);
        var sure = belief.At(0.05);
        var low = sampler.Run(Math.Max(samples / 4, 100), _ => sure, lowEnd: true, threads).Bursts;
        return new BurstDistribution(vessel, belief, seed, prediction, sampler, run, low);
    }

    private static double At(double[] sorted, double share) => SortedArrayStatistics.QuantileCustom(sorted, share, QuantileDefinition.R7);
}

/// <summary>One thing that scatters, and how much of the burst's scatter is its doing.</summary>
/// <param name="Name">What scatters.</param>
/// <param name="Correlation">Correlation of the burst with it [-].</param>
/// <param name="Share">Share of the burst's variance it explains by itself, the square of the correlation.</param>
/// <remarks>Source: Saltelli et al., Global Sensitivity Analysis: The Primer, 2008, §1.2 (squared correlation for a nearly linear
/// model).</remarks>
public sealed record BurstDriver(string Name, double Correlation, Ratio Share);
