using MathNet.Numerics.Integration;
using NotebookKit.Numerics;

namespace NotebookKit.Vessels.Allowables;

/// <summary>Modes of failure that compete: the first to come ends the test, all others had held until then.</summary>
/// <remarks>
/// Each mode has a Weibull distribution of its own, fitted with all other ends of tests censored; modes are independent. Source: Meeker and
/// Escobar, Statistical Methods for Reliability Data, 1998, ch. 15; Kaplan and Meier, J. Am. Stat. Assoc. 53, 1958; Aalen and Johansen,
/// Scand. J. Stat. 5, 1978.
/// </remarks>
public sealed class CompetingModes
{
    private readonly ModeObservation[] _sorted;

    private CompetingModes(ModeObservation[] sorted, IReadOnlyDictionary<string, CensoredWeibull> modes)
    {
        _sorted = sorted;
        Modes = modes;
    }

    /// <summary>The fit of each mode.</summary>
    public IReadOnlyDictionary<string, CensoredWeibull> Modes { get; }

    /// <summary>Logarithm of the likelihood of all modes together [-]; not to be compared with that of a fit that leaves the modes
    /// out.</summary>
    public double LogLikelihood => Modes.Values.Sum(m => m.LogLikelihood);

    /// <summary>Fits every mode that occurs. Source: Meeker and Escobar 1998, ch. 15.</summary>
    /// <param name="observations">What was tested; at least two failures of every mode.</param>
    /// <exception cref="ArgumentException">A mode has fewer than two failures, or a value isn't above 0.</exception>
    public static CompetingModes Of(IReadOnlyList<ModeObservation> observations)
    {
        ArgumentNullException.ThrowIfNull(observations);
        var names = observations.Select(o => o.Mode).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        if (names.Count == 0) throw new ArgumentException("Nothing has failed; competing modes need at least two failures of each. See "
            + "NoFailureBelief for tests without a failure.", nameof(observations));
        return new CompetingModes(
            [.. observations.OrderBy(o => o.Value)],
            names.ToDictionary(n => n, n => CensoredWeibull.Of([.. observations.Where(o => o.Mode == n).Select(o => o.Value)],
                [.. observations.Where(o => o.Mode != n).Select(o => o.Value)]), StringComparer.Ordinal));
    }

    /// <summary>Share that has not failed by any mode [-]. Source: product of the modes' reliabilities.</summary>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    public double Reliability(double value) => Modes.Values.Aggregate(1.0, (r, m) => r * m.Reliability(value));

    /// <summary>Value that a share has failed below, by any mode [the unit of the data]. Source: root of the reliability.</summary>
    /// <param name="share">Share [-]; 0.0001 to 0.9999.</param>
    /// <exception cref="Provenance.OutOfRangeException">The share is out of range.</exception>
    public double Quantile(double share)
    {
        new Provenance.ValidRange<double>(0.0001, 0.9999).Check(share, "share", "0.10 is one in ten.");
        // No later than the first mode alone, no earlier than all of them at the share over their number.
        var high = Modes.Values.Min(m => m.Fit.Quantile(share));
        var low = Modes.Values.Min(m => m.Fit.Quantile(share / Modes.Count / 2));
        return BracketedRoot.Solve(v => Reliability(v) - (1 - share), low, high * 1.0001, 1e-10 * high);
    }

    /// <summary>Share that has failed by one mode before any other, up to a value [-]. Source: integral of the mode's hazard times the
    /// reliability.</summary>
    /// <param name="mode">The mode.</param>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    /// <exception cref="ArgumentException">No test failed by that mode.</exception>
    public double FirstToFail(string mode, double value)
    {
        var fit = Fit(mode).Fit;
        // Over the mode's own cumulative hazard the integrand is the reliability alone; pieces halve towards 0, where it may be steep.
        double sum = 0, high = 1;
        for (var piece = 0; piece < 24; piece++)
        {
            var low = piece == 23 ? 0 : high / 2;
            sum += GaussLegendreRule.Integrate(v => Reliability(value * Math.Pow(v, 1 / fit.Shape)), low, high, 16);
            high = low;
        }

        return sum * Math.Pow(value / fit.Scale, fit.Shape);
    }

    /// <summary>Share that has not failed, with no distribution assumed [-]. Source: Kaplan and Meier 1958.</summary>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    public double KaplanMeier(double value) => Count(null, value).Surviving;

    /// <summary>Share that has failed by one mode, with no distribution assumed [-]. Source: Aalen and Johansen 1978.</summary>
    /// <param name="mode">The mode.</param>
    /// <param name="value">Value, 0 or above [the unit of the data].</param>
    /// <exception cref="ArgumentException">No test failed by that mode.</exception>
    public double Incidence(string mode, double value)
    {
        Fit(mode);
        return Count(mode, value).Failed;
    }

    private CensoredWeibull Fit(string mode) =>
        Modes.TryGetValue(mode, out var fit) ? fit : throw new ArgumentException($"No test failed by \"{mode}\"; modes are "
            + $"{string.Join(", ", Modes.Keys)}.", nameof(mode));

    private (double Surviving, double Failed) Count(string? mode, double value)
    {
        double surviving = 1, failed = 0;
        for (var i = 0; i < _sorted.Length && _sorted[i].Value <= value;)
        {
            var end = i;
            int all = 0, own = 0;
            while (end < _sorted.Length && _sorted[end].Value == _sorted[i].Value)
            {
                if (_sorted[end].Mode is { } m)
                {
                    all++;
                    if (m == mode) own++;
                }

                end++;
            }

            double atRisk = _sorted.Length - i;
            failed += surviving * own / atRisk;
            surviving *= 1 - all / atRisk;
            i = end;
        }

        return (surviving, failed);
    }
}
