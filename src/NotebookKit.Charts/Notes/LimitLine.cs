namespace NotebookKit.Charts.Notes;

/// <summary>A value that must not be passed, or that matters: working pressure, proof, ceiling.</summary>
/// <param name="Value">Where [unit of the axis it is read on]; any finite value.</param>
/// <param name="Label">What it is; the chart adds nothing, so put value and unit in where they matter.</param>
public sealed record LimitLine(double Value, string Label)
{
    /// <summary>Whether the line stands upright, being read on the horizontal axis.</summary>
    public bool IsVertical { get; init; }

    /// <summary>Whether it is read on the axis at the right.</summary>
    public bool OnRight { get; init; }

    /// <summary>Its place in the palette, so that it may share the colour of what it limits; none is dark grey.</summary>
    public int? Slot { get; init; }
}
