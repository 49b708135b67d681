namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A value of a design: stated in its file, or a default that the file leaves standing.</summary>
/// <param name="Path">Where it stands: "charge.fill pressure", "vessel.plies.1.material".</param>
/// <param name="Name">Shortest plain name that means it alone: "fill pressure"; the path where there is none.</param>
/// <param name="Value">Value as written, with its unit.</param>
/// <param name="Kind">What kind of value: "length", "gauge pressure", "cloth".</param>
/// <param name="Range">What it may be: "5 mm to 500 mm"; empty where nothing bounds it.</param>
/// <param name="Why">Why it has this value, or what it is.</param>
/// <param name="State">Whether the file states it.</param>
public sealed record DesignGiven(string Path, string Name, string Value, string Kind, string Range, string Why, GivenState State)
{
    /// <summary>Whether the file gives its reason: what the design is steered by.</summary>
    public bool HasReason { get; init; }
}

/// <summary>Whether a design's file states a value.</summary>
public enum GivenState
{
    /// <summary>The file states it.</summary>
    Stated,

    /// <summary>The file leaves it out, and the named default is taken.</summary>
    Default,

    /// <summary>The file leaves it out, and there is no default: it is not given.</summary>
    NotGiven,
}
