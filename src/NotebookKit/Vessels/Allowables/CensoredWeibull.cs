using NotebookKit.Numerics;

namespace NotebookKit.Vessels.Allowables;

/// <summary>Weibull distribution fitted by maximum likelihood to failures and to values that had not failed yet (right-censored).</summary>
/// <param name="Fit">Scale and shape.</param>
/// <param name="Failures">How many values are failures.</param>
/// <param name="Survivors">How many values had not failed.</param>
/// <param name="LogLikelihood">Logarithm of the likelihood at its top [-].</param>
/// <param name="LocationError">Standard error of the scale's logarithm [-].</param>
/// <param name="SpreadError">Standard error of one over the shape [-].</param>
/// <remarks>Source: Meeker and Escobar, Statistical Methods for Reliability Data, 1998, ch. 8 (likelihood, observed information).</remarks>
public sealed record CensoredWeibull(WeibullFit Fit, int Failures, int Survivors, double LogLikelihood, double LocationError,
    double SpreadError)
{
    /// <summary>Logarithm of the scale, μ [logarithm of the data's unit].</summary>
    public double Location => Math.Log(Fit.Scale);

    /// <summary>One over the shape, σ [-].</summary>
    public double Spread => 1 / Fit.Shape;

    /// <summary>Share that is above a value [-]. Source: definition of the distribution.</summary>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    public double Reliability(double value) => Math.Exp(-Math.Pow(value / Fit.Scale, Fit.Shape));

    /// <summary>Fits failures and survivors. Source: Meeker and Escobar 1998, ch. 8.</summary>
    /// <param name="failed">Values at which something failed, each above 0 [one unit for all]; at least two, not all alike.</param>
    /// <param name="survived">Values that were reached without a failure, each above 0 [the same unit]; any number.</param>
    /// <exception cref="ArgumentException">There are too few failures, a value isn't above 0, or no shape fits them.</exception>
    public static CensoredWeibull Of(IReadOnlyList<double> failed, IReadOnlyList<double> survived)
    {
        ArgumentNullException.ThrowIfNull(failed);
        ArgumentNullException.ThrowIfNull(survived);
        if (failed.Count < 2) throw new ArgumentException("A Weibull fit needs at least two failures; there "
            + $"{(failed.Count == 1 ? "is one" : "are none")}. Take a known shape for fewer.", nameof(failed));
        var all = new double[failed.Count + survived.Count];
        for (var i = 0; i < all.Length; i++)
        {
            all[i] = i < failed.Count ? failed[i] : survived[i - failed.Count];
            if (!(all[i] > 0) || !double.IsFinite(all[i])) throw new ArgumentException("A Weibull fit takes finite values above 0; check "
                + "the list for a zero, a negative or a missing one.", nameof(failed));
        }

        // Scaled by the largest, so that a power never overflows.
        var largest = all.Max();
        for (var i = 0; i < all.Length; i++) all[i] = Math.Log(all[i] / largest);
        var r = failed.Count;
        var mean = all.AsSpan(0, r).ToArray().Average();
        if (mean > -1e-9) throw new ArgumentException("All failures lie at the largest value; no shape fits them. Add tests that failed "
            + "lower, or take a known shape.", nameof(failed));
        // Zero at the likelihood's top: weighted mean of all logarithms less 1/β less the failures' mean.
        var shape = BracketedRoot.Solve(b => Moment(all, b, 1) / Moment(all, b, 0) - 1 / b - mean, 1e-3, 1e5, 1e-11);
        var scaled = Math.Pow(Moment(all, shape, 0) / r, 1 / shape);
        var fit = new WeibullFit(largest * scaled, shape);
        double first = 0, second = 0, logFailures = 0;
        for (var i = 0; i < all.Length; i++)
        {
            var z = shape * (all[i] - Math.Log(scaled));
            var e = Math.Exp(z);
            first += z * e;
            second += z * z * e;
            if (i < r) logFailures += z - (all[i] + Math.Log(largest));
        }

        // Observed information of μ and σ at the top, where the hazards add up to the failures.
        double muMu = r * shape * shape, muSigma = first * shape * shape, sigmaSigma = (r + second) * shape * shape;
        var determinant = muMu * sigmaSigma - muSigma * muSigma;
        return new CensoredWeibull(
            fit, r, survived.Count, logFailures + r * Math.Log(shape) - r, Math.Sqrt(sigmaSigma / determinant),
                Math.Sqrt(muMu / determinant));
    }

    private static double Moment(double[] logs, double shape, int power)
    {
        var sum = 0.0;
        foreach (var l in logs) sum += Math.Exp(shape * l) * (power == 0 ? 1 : l);
        return sum;
    }
}
