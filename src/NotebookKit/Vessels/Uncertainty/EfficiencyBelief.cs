using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>What is believed of the fabrication efficiency: a weight for every value it may have.</summary>
/// <remarks>
/// On a grid even in the logarithm, 15 % to 130 %. Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, §1.3 and ch. 3 (grid
/// approximation of a posterior).
/// </remarks>
public sealed class EfficiencyBelief
{
    private const int Points = 600;
    private const double Lowest = 0.15;
    private const double Highest = 1.30;

    private readonly double[] _cumulative;

    internal EfficiencyBelief(double[] weights, string name)
    {
        Name = name;
        var total = weights.Sum();
        Weights = [.. weights.Select(w => w / total)];
        _cumulative = new double[Points];
        var sum = 0.0;
        for (var i = 0; i < Points; i++) _cumulative[i] = sum += Weights[i];
    }

    /// <summary>What it is: "before any test", "after 2 bursts and 5 proofs".</summary>
    public string Name { get; }

    /// <summary>Expected efficiency. Source: mean of the grid.</summary>
    public Ratio Mean => Ratio.FromPercent(100 * Grid.Zip(Weights, (x, w) => x * w).Sum());

    /// <summary>Spread of the belief: its standard deviation in the logarithm, close to a coefficient of variation [-]. Source: second
    /// moment of the grid.</summary>
    public double Spread
    {
        get
        {
            var mean = Grid.Zip(Weights, (x, w) => Math.Log(x) * w).Sum();
            return Math.Sqrt(Grid.Zip(Weights, (x, w) => Math.Pow(Math.Log(x) - mean, 2) * w).Sum());
        }
    }

    /// <summary>Efficiency, for drawing the belief [%].</summary>
    public Series Efficiency { get; } = new("Fabrication efficiency", "%", [.. Grid.Select(x => 100 * x)]);

    /// <summary>Density of the belief, for drawing it [1/%].</summary>
    public Series Density => new("Belief", "1/%", [.. Grid.Select((x, i) => Weights[i] / (100 * x * Step))]);

    /// <summary>What is believed before any test: median and the two ends of the fabrication, in the logarithm two half normals. Source: as
    /// <see cref="Fabrication"/>.</summary>
    /// <param name="fabrication">How well the vessel is made.</param>
    public static EfficiencyBelief Of(Fabrication fabrication)
    {
        ArgumentNullException.ThrowIfNull(fabrication);
        InvalidDesignException.ThrowIfAny("Fabrication", fabrication.Validate());
        var middle = Math.Log(fabrication.Efficiency.DecimalFractions);
        // One in twenty lies past either end: 1.645 standard deviations.
        var below = Math.Max(middle - Math.Log(fabrication.EfficiencyLow.DecimalFractions), 1e-3) / 1.6449;
        var above = Math.Max(Math.Log(fabrication.EfficiencyHigh.DecimalFractions) - middle, 1e-3) / 1.6449;
        return new EfficiencyBelief(
            [.. Grid.Select(x =>
            {
                var d = Math.Log(x) - middle;
                var s = d < 0 ? below : above;
                // Each half holds half of the belief.
                return Math.Exp(-0.5 * d * d / (s * s)) / s;
            })],
            "before any test");
    }

    /// <summary>Efficiency that a share of the belief lies below. Source: cumulative sum of the grid.</summary>
    /// <param name="share">Share [-]; 0 to 1.</param>
    /// <exception cref="OutOfRangeException">The share is out of range.</exception>
    public Ratio Quantile(double share) =>
        Ratio.FromPercent(100 * At(new ValidRange<double>(0, 1).Check(share, "share", "0.05 is 5 %.")));

    /// <summary>For example "60.9 %, 45 % to 80 % in nine of ten".</summary>
    public override string ToString() => $"{Mean.Show()}, {Quantile(0.05).Show(2)} to {Quantile(0.95).Show(2)} in nine of ten";

    internal static IReadOnlyList<double> Grid { get; } = [.. Enumerable.Range(0, Points).Select(i => Lowest * Math.Exp(Step * i))];

    internal IReadOnlyList<double> Weights { get; }

    /// <summary>Efficiency at a share of the belief [-], straight between grid points in the logarithm.</summary>
    internal double At(double share)
    {
        var i = Array.BinarySearch(_cumulative, share);
        if (i < 0) i = ~i;
        if (i >= Points) return Highest;
        var before = i == 0 ? 0 : _cumulative[i - 1];
        var part = Weights[i] > 0 ? (share - before) / Weights[i] : 0.5;
        return Lowest * Math.Exp(Step * (i - 0.5 + part));
    }

    private static double Step => Math.Log(Highest / Lowest) / (Points - 1);
}
