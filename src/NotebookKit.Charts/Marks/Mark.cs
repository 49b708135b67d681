using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>Something drawn from data: a curve, points, bars. It keeps its columns with their units, so that a chart can refuse a
/// mix.</summary>
public abstract record Mark
{
    /// <summary>Its name in the legend; empty keeps it out of the legend.</summary>
    public string Name { get; init; } = "";

    /// <summary>Whether it is read on the axis at the right.</summary>
    public bool OnRight { get; init; }

    /// <summary>Its place in the palette, 0 for the first; none takes the next free one.</summary>
    public int? Slot { get; init; }

    /// <summary>The columns read on the horizontal axis.</summary>
    internal abstract IEnumerable<Series> Horizontal { get; }

    /// <summary>The columns read on the vertical axis (left or right).</summary>
    internal abstract IEnumerable<Series> Vertical { get; }

    /// <summary>The columns read on the upward axis of a chart in space.</summary>
    internal virtual IEnumerable<Series> Upward => [];

    /// <summary>What is wrong with the columns themselves.</summary>
    internal virtual IEnumerable<Finding> Validate()
    {
        var count = -1;
        foreach (var series in Horizontal.Concat(Vertical))
        {
            if (count >= 0 && series.Count != count)
                yield return Finding.Error($"'{series.Name}' has {series.Count} values where the column beside it has {count}; give "
                    + "columns of one length.");
            count = series.Count;
            if (count == 0) yield return Finding.Error($"'{series.Name}' has no values; there is nothing to draw.");
            if (count > 0 && !series.Values.Any(double.IsFinite))
                yield return Finding.Error($"'{series.Name}' has no finite value; check what it was computed from.");
        }
    }
}
