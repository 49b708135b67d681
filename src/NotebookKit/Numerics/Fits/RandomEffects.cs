using MathNet.Numerics.Distributions;

namespace NotebookKit.Numerics.Fits;

/// <summary>One answer from several estimates of a quantity that itself differs a little from case to case.</summary>
/// <remarks>
/// Source: R. DerSimonian, N. Laird, Controlled Clinical Trials 7 (1986) 177, for mean and scatter; G. Knapp, J. Hartung, Statistics in
/// Medicine 22 (2003) 2693, for the interval, never narrower than the first's; J. P. T. Higgins, S. G. Thompson, D. J. Spiegelhalter, J. R.
/// Statist. Soc. A 172 (2009) 137, for the next case. All unverified.
/// </remarks>
/// <param name="Mean">The mean of the cases.</param>
/// <param name="StandardError">Its standard error after DerSimonian and Laird.</param>
/// <param name="WidenedError">Its standard error after Knapp and Hartung, where that is larger.</param>
/// <param name="BetweenVariance">Variance from case to case.</param>
/// <param name="Heterogeneity">Weighted sum of squares about the common mean; its expectation is Count − 1 where the cases don't
/// differ.</param>
/// <param name="Count">Estimates combined.</param>
internal sealed record RandomEffects(double Mean, double StandardError, double WidenedError, double BetweenVariance, double Heterogeneity,
    int Count)
{
    /// <summary>Half of the 95 % interval of the mean.</summary>
    public double HalfWidth => StudentT.InvCDF(0, 1, Count - 1, 0.975) * WidenedError;

    /// <summary>Half of the interval that holds the next case in 95 %.</summary>
    // The source takes Count − 2; two cases leave one degree of freedom here, so that they give an interval at all.
    public double NextHalfWidth => StudentT.InvCDF(0, 1, Math.Max(1, Count - 2), 0.975)
        * Math.Sqrt(BetweenVariance + WidenedError * WidenedError);

    /// <summary>Combines estimates.</summary>
    /// <param name="values">The estimates; two or more.</param>
    /// <param name="standardErrors">Their standard errors; above 0.</param>
    public static RandomEffects Of(IReadOnlyList<double> values, IReadOnlyList<double> standardErrors)
    {
        double[] weights = [.. standardErrors.Select(e => 1 / (e * e))];
        var (sum, common) = Weighted(values, weights);
        var q = values.Zip(weights, (v, w) => w * (v - common) * (v - common)).Sum();
        var between = Math.Max(0, (q - (values.Count - 1)) / (sum - weights.Sum(w => w * w) / sum));
        double[] widened = [.. standardErrors.Select(e => 1 / (e * e + between))];
        var (total, mean) = Weighted(values, widened);
        var plain = Math.Sqrt(1 / total);
        var adjusted = values.Count < 2 ? plain
            : Math.Sqrt(values.Zip(widened, (v, w) => w * (v - mean) * (v - mean)).Sum() / ((values.Count - 1) * total));
        return new(mean, plain, Math.Max(plain, adjusted), values.Count < 2 ? 0 : between, q, values.Count);
    }

    /// <summary>How many standard deviations each estimate is from what the others say, their own scatter counted.</summary>
    /// <param name="values">The estimates; three or more.</param>
    /// <param name="standardErrors">Their standard errors; above 0.</param>
    public static double[] Deviations(IReadOnlyList<double> values, IReadOnlyList<double> standardErrors) =>
    [
        .. values.Select((v, i) =>
        {
            var others = Of([.. values.Where((_, k) => k != i)], [.. standardErrors.Where((_, k) => k != i)]);
            return (v - others.Mean) / Math.Sqrt(standardErrors[i] * standardErrors[i] + others.BetweenVariance
                + others.WidenedError * others.WidenedError);
        }),
    ];

    private static (double Sum, double Mean) Weighted(IReadOnlyList<double> values, double[] weights)
    {
        var sum = weights.Sum();
        return (sum, values.Zip(weights, (v, w) => v * w).Sum() / sum);
    }
}
