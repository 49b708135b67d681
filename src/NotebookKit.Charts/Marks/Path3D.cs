using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>A path in space over a ground plan. A chart that has one is drawn in three dimensions and holds nothing but paths.</summary>
public sealed record Path3D : Mark
{
    /// <summary>Creates the path; all columns share one unit.</summary>
    /// <param name="x">Eastward values.</param>
    /// <param name="y">Northward values.</param>
    /// <param name="z">Upward values.</param>
    public Path3D(Series x, Series y, Series z)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        ArgumentNullException.ThrowIfNull(z);
        (X, Y, Z) = (x, y, z);
        Name = z.Name;
    }

    /// <summary>Eastward values.</summary>
    public Series X { get; init; }

    /// <summary>Northward values.</summary>
    public Series Y { get; init; }

    /// <summary>Upward values.</summary>
    public Series Z { get; init; }

    /// <summary>Whether the path is a thin one: a shadow on the ground.</summary>
    public bool Reference { get; init; }

    internal override IEnumerable<Series> Horizontal => [X];

    internal override IEnumerable<Series> Vertical => [Y];

    internal override IEnumerable<Series> Upward => [Z];

    internal override IEnumerable<Finding> Validate()
    {
        foreach (var finding in base.Validate()) yield return finding;
        if (Z.Count != X.Count) yield return Finding.Error($"'{Z.Name}' has {Z.Count} values where the column beside it has {X.Count}; "
            + "give columns of one length.");
        if (Z.Unit != X.Unit || Y.Unit != X.Unit)
            yield return Finding.Error($"A path in space needs one unit; '{X.Name}' is in {X.Unit}, '{Y.Name}' in {Y.Unit}, '{Z.Name}' "
                + $"in {Z.Unit}.");
    }
}
