using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>A line through values in order; a value that isn't a number leaves a gap.</summary>
public sealed record Curve : Mark
{
    /// <summary>Creates the line; its legend name is the name of the vertical column.</summary>
    /// <param name="x">Horizontal values.</param>
    /// <param name="y">Vertical values, as many as the horizontal ones.</param>
    public Curve(Series x, Series y)
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

    /// <summary>Whether the area between line and zero is tinted: an impulse, an energy.</summary>
    public bool Filled { get; init; }

    /// <summary>How the line is drawn.</summary>
    public Stroke Stroke { get; init; }

    internal override IEnumerable<Series> Horizontal => [X];

    internal override IEnumerable<Series> Vertical => [Y];
}

/// <summary>How a line is drawn.</summary>
public enum Stroke
{
    /// <summary>In the dash pattern of its place in the palette, so that lines stay apart in black and white.</summary>
    Data,

    /// <summary>Unbroken: an edge, a border.</summary>
    Solid,

    /// <summary>Thin and dashed: a bound, a reference.</summary>
    Reference,
}
