using NotebookKit.Flight.Site;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>Where one of the things that come down lands, over all flights. Source: see <see cref="DispersionResult.Model"/>.</summary>
/// <param name="East">Landing to the east of the pad, a row for every flight [m]; NaN where a flight failed.</param>
/// <param name="North">Landing to the north of the pad, a row for every flight [m]; NaN where a flight failed.</param>
/// <param name="Landings">Where they land; none where fewer than two did.</param>
/// <param name="OffField">How often they land off the field, where there is one.</param>
/// <param name="OnLanding">Sensitivity of the distance of the landing from the pad, the strongest first.</param>
public sealed record StageScatter(
    Series East, Series North, LandingScatter? Landings, Likelihood? OffField, IReadOnlyList<Sensitivity> OnLanding)
{
    internal static StageScatter Of(Series east, Series north, IReadOnlyList<Series> inputs, FlyingField? field,
        int[]? ranked = null, double[][]? ranks = null)
    {
        var landed = Enumerable.Range(0, east.Count).Where(i => double.IsFinite(east[i])).ToArray();
        if (landed.Length < 2) return new(east, north, null, null, []);
        double[] x = [.. landed.Select(i => east[i])], y = [.. landed.Select(i => north[i])];
        var off = field is null ? null : Likelihood.Of(Enumerable.Range(0, landed.Length).Count(i => !field.Contains(x[i], y[i])),
            landed.Length);
        double[] away = [.. Enumerable.Range(0, landed.Length).Select(i => Math.Sqrt((x[i] * x[i]) + (y[i] * y[i])))];
        return new(east, north, new(x, y), off, ranks is not null && ranked.AsSpan().SequenceEqual(landed)
            ? RankCorrelation.Correlate(inputs, ranks, away) : RankCorrelation.Correlate(inputs, landed, away));
    }
}

/// <summary>
/// How far one input sways one output. Source: rank correlation of C. Spearman, 1904; shares by its square, which add up where inputs are
/// independent and the answer is monotone.
/// </summary>
/// <param name="Input">What varies.</param>
/// <param name="Correlation">Rank correlation with the output [-]; −1 to 1.</param>
/// <param name="Share">Its square, as a share of all inputs'.</param>
public sealed record Sensitivity(string Input, double Correlation, Ratio Share);
