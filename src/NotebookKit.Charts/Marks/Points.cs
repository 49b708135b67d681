using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>Unconnected points: measurements, candidates, landings.</summary>
public sealed record Points : Mark
{
    /// <summary>Creates the points; their legend name is the name of the vertical column.</summary>
    /// <param name="x">Horizontal values.</param>
    /// <param name="y">Vertical values, as many as the horizontal ones.</param>
    public Points(Series x, Series y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        (X, Y) = (x, y);
        Name = y.Name;
    }

    /// <summary>Horizontal values.</summary>
    public Series X { get; init; }

    /// <summary>Vertical values.</summary>
    public Series Y { get; init; }

    /// <summary>What each point is, shown when it is pointed at; empty, or one a point.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];

    /// <summary>Whether the labels stand beside the points as well.</summary>
    public bool LabelsShown { get; init; }

    /// <summary>The shape of the points.</summary>
    public PointShape Shape { get; init; } = PointShape.Circle;

    /// <summary>Size across a point [px]; 1 to 40.</summary>
    public double Size { get; init; } = 8;

    /// <summary>The same points where they are few enough to be drawn; else every second, third... of them, and the name says so.</summary>
    internal Points AtMost(int most)
    {
        if (X.Count <= most) return this;
        var step = ((X.Count - 1) / most) + 1;
        return this with
        {
            X = X with { Values = [.. Every(X.Values)] },
            Y = Y with { Values = [.. Every(Y.Values)] },
            Labels = [.. Every(Labels)],
            Name = $"{Name} (one in {step} shown)",
        };

        IEnumerable<T> Every<T>(IEnumerable<T> all) => all.Where((_, i) => i % step == 0);
    }

    internal override IEnumerable<Series> Horizontal => [X];

    internal override IEnumerable<Series> Vertical => [Y];

    internal override IEnumerable<Finding> Validate()
    {
        foreach (var finding in base.Validate()) yield return finding;
        if (Labels.Count != 0 && Labels.Count != X.Count)
            yield return Finding.Error($"'{Name}' has {Labels.Count} labels for {X.Count} points; give one a point or none.");
        if (Size is not (>= 1 and <= 40))
            yield return Finding.Error($"Point size of '{Name}' is {Digits.Round(Size)} px; it must be 1 px to 40 px.");
    }
}
