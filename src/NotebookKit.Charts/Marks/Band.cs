using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>A tinted band between a lower and an upper line: what a prediction allows.</summary>
public sealed record Band : Mark
{
    /// <summary>Creates the band.</summary>
    /// <param name="x">Horizontal values.</param>
    /// <param name="lower">Lower edge.</param>
    /// <param name="upper">Upper edge.</param>
    public Band(Series x, Series lower, Series upper)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(lower);
        ArgumentNullException.ThrowIfNull(upper);
        (X, Lower, Upper) = (x, lower, upper);
        Name = $"{lower.Name} to {upper.Name}";
    }

    /// <summary>Horizontal values.</summary>
    public Series X { get; init; }

    /// <summary>Lower edge.</summary>
    public Series Lower { get; init; }

    /// <summary>Upper edge.</summary>
    public Series Upper { get; init; }

    internal override IEnumerable<Series> Horizontal => [X];

    internal override IEnumerable<Series> Vertical => [Lower, Upper];
}
