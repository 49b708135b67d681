using NotebookKit.Numerics;

namespace NotebookKit.Vessels.Allowables;

/// <summary>Two-parameter Weibull distribution fitted by maximum likelihood.</summary>
/// <param name="Scale">Scale α: 63.2 % are below it [the unit of the data]; above 0.</param>
/// <param name="Shape">Shape β: the higher, the less scatter [-]; above 0.</param>
/// <remarks>Source: MIL-HDBK-17-1F, §8.3.4 (maximum likelihood, two parameters).</remarks>
public sealed record WeibullFit(double Scale, double Shape)
{
    /// <summary>Fits values. Source: MIL-HDBK-17-1F, §8.3.4.</summary>
    /// <param name="values">Values, each above 0 [one unit for all]; at least two, not all alike.</param>
    /// <exception cref="ArgumentException">There are fewer than two, one isn't above 0, or all are alike.</exception>
    public static WeibullFit Of(IReadOnlyList<double> values)
    {
        const double MostApart = -100;
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < 2) throw new ArgumentException("A Weibull fit needs at least two values; there "
            + $"{(values.Count == 1 ? "is one" : "are none")}.", nameof(values));
        if (values.Any(v => !(v > 0) || !double.IsFinite(v))) throw new ArgumentException("A Weibull fit takes finite values above 0; "
            + "check the list for a zero, a negative or a missing one.", nameof(values));
        // Scaled by the largest, so that a power never overflows.
        var largest = values.Max();
        var logs = values.Select(v => Math.Log(v) - Math.Log(largest)).ToArray();
        if (logs.Min() < MostApart) throw new ArgumentException("The values lie too far apart for one Weibull law; "
            + "check the list for a value in another unit.", nameof(values));
        if (logs.Min() > -1e-12) throw new ArgumentException("All values are alike; a Weibull fit needs scatter.", nameof(values));
        var mean = logs.Average();
        var shape = BracketedRoot.Solve(Slope, 1e-3, 1e5, 1e-10);
        return new WeibullFit(largest * Math.Pow(logs.Average(l => Math.Exp(shape * l)), 1 / shape), shape);

        // Zero at the likelihood's top: weighted mean of the logarithms less 1/β less their mean.
        double Slope(double beta)
        {
            double weights = 0, sum = 0;
            foreach (var l in logs)
            {
                var w = Math.Exp(beta * l);
                weights += w;
                sum += w * l;
            }

            return sum / weights - 1 / beta - mean;
        }
    }

    /// <summary>Value that a share is below [the unit of the data]. Source: definition of the distribution.</summary>
    /// <param name="share">Share [-]; above 0, below 1.</param>
    /// <exception cref="ArgumentException">The share isn't between 0 and 1, or scale or shape isn't above 0.</exception>
    public double Quantile(double share) => share is not (>= 0 and <= 1)
        ? throw new ArgumentOutOfRangeException(nameof(share), $"share is {share}; it must be 0 to 1.")
        : Scale is > 0 and < double.PositiveInfinity && Shape is > 0 and < double.PositiveInfinity
            ? Scale * Math.Pow(-Math.Log(1 - share), 1 / Shape)
            : throw new ArgumentException($"A Weibull law has a finite scale and shape above 0; these are {Scale} and {Shape}.");

    /// <summary>Coefficient of variation of the distribution [-]. Source: its first two moments.</summary>
    public double Spread
    {
        get
        {
            var first = MathNet.Numerics.SpecialFunctions.Gamma(1 + 1 / Shape);
            return Math.Sqrt(MathNet.Numerics.SpecialFunctions.Gamma(1 + 2 / Shape) / (first * first) - 1);
        }
    }
}
