namespace NotebookKit.Charts.Drawings;

/// <summary>A finished drawing.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Description">The same in words, for whoever can't see it.</param>
/// <param name="Svg">The drawing as SVG; its width and height are paper sizes in mm.</param>
public sealed record Drawing(string Title, string Description, string Svg)
{
    /// <summary>The same for a narrow screen; empty where the drawing is narrow enough as it is.</summary>
    public string Narrow { get; init; } = "";

    /// <summary>Title and description.</summary>
    public override string ToString() => $"{Title}: {Description}";
}
