using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>A value over two variables, drawn as a contour map: apogee over water fraction and nozzle bore.</summary>
public sealed record Field : Mark
{
    /// <summary>Creates the map.</summary>
    /// <param name="x">Values of the horizontal variable, rising.</param>
    /// <param name="y">Values of the vertical variable, rising.</param>
    /// <param name="z">The value at each pair, row by row: all x at the first y, all x at the second, and so on. A value that isn't a
    /// number is left blank.</param>
    public Field(Series x, Series y, Series z)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        ArgumentNullException.ThrowIfNull(z);
        (X, Y, Z) = (x, y, z);
    }

    /// <summary>Values of the horizontal variable.</summary>
    public Series X { get; init; }

    /// <summary>Values of the vertical variable.</summary>
    public Series Y { get; init; }

    /// <summary>The value at each pair, row by row.</summary>
    public Series Z { get; init; }

    /// <summary>Name and unit beside the colour scale: "Apogee [m]".</summary>
    public string ScaleTitle => $"{Z.Name} [{Z.Unit}]";

    internal override IEnumerable<Series> Horizontal => [X];

    internal override IEnumerable<Series> Vertical => [Y];

    internal double At(int column, int row) => Z[(row * X.Count) + column];

    internal override IEnumerable<Finding> Validate()
    {
        foreach (var axis in new[] { X, Y })
        {
            if (axis.Count < 2) yield return Finding.Error($"'{axis.Name}' has {axis.Count} values; a map needs at least 2 each way.");
            for (var i = 1; i < axis.Count; i++)
            {
                if (axis[i] > axis[i - 1]) continue;
                yield return Finding.Error($"'{axis.Name}' doesn't rise at value {i + 1} ({Digits.Round(axis[i])} after "
                    + $"{Digits.Round(axis[i - 1])}); a map needs rising values.");
                break;
            }
        }
        if (Z.Count != X.Count * Y.Count)
            yield return Finding.Error($"'{Z.Name}' has {Z.Count} values; a map of {X.Count} by {Y.Count} needs {X.Count * Y.Count}.");
        if (string.IsNullOrWhiteSpace(Z.Unit))
            yield return Finding.Error($"'{Z.Name}' has no unit. Give one; \"-\" says that the number is a plain ratio.");
        if (!Z.Values.Any(double.IsFinite))
            yield return Finding.Error($"'{Z.Name}' has no finite value; check what it was computed from.");
    }
}
