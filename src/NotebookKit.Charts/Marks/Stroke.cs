namespace NotebookKit.Charts.Marks;

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
