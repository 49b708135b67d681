using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>How often values fall into classes of equal width, as a share of all [%].</summary>
public sealed record Histogram : Mark
{
    /// <summary>Creates the histogram; the vertical axis must be in %.</summary>
    /// <param name="samples">The values.</param>
    public Histogram(Series samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        Samples = samples;
        Name = samples.Name;
    }

    /// <summary>The values.</summary>
    public Series Samples { get; init; }

    /// <summary>How many classes; none chooses them from the spread of the values. 1 to 500.</summary>
    public int? Classes { get; init; }

    internal override IEnumerable<Series> Horizontal => [Samples];

    internal override IEnumerable<Series> Vertical => [];

    internal override IEnumerable<Finding> Validate()
    {
        foreach (var finding in base.Validate()) yield return finding;
        if (Classes is < 1 or > 500) yield return Finding.Error($"'{Name}' is to be sorted into {Classes} classes; it must be 1 to 500.");
    }

    /// <summary>Centres of the classes in the unit of the samples, their width, and the share of each [%].</summary>
    internal (double[] Centres, double Width, double[] Shares) Count()
    {
        var values = Samples.Values.Where(double.IsFinite).Order().ToArray();
        var (low, high) = (values[0], values[^1]);
        if (low == high) return ([low], Math.Max(Math.Abs(low) * 1e-3, 1e-9), [100]);
        var classes = Classes ?? Rule(values);
        var width = (high - low) / classes;
        var counts = new double[classes];
        foreach (var value in values) counts[Math.Min(classes - 1, (int)((value - low) / width))]++;
        return ([.. Enumerable.Range(0, classes).Select(i => low + ((i + 0.5) * width))], width,
            [.. counts.Select(c => 100 * c / values.Length)]);
    }

    // Freedman and Diaconis, On the histogram as a density estimator, 1981: width = 2 IQR / n^(1/3).
    private static int Rule(double[] sorted)
    {
        var spread = sorted[(int)(0.75 * (sorted.Length - 1))] - sorted[(int)(0.25 * (sorted.Length - 1))];
        if (spread <= 0) return 30;
        var width = 2 * spread / Math.Cbrt(sorted.Length);
        return Math.Clamp((int)Math.Ceiling((sorted[^1] - sorted[0]) / width), 5, 80);
    }
}
