using NotebookKit.Building.Nests;
using UnitsNet;

namespace NotebookKit.Sheets;

/// <summary>One pattern at full size: lines, circles and words on a rectangle of paper that begins at zero along and across.</summary>
/// <param name="Name">What it is: "fin, cut 3".</param>
/// <param name="Note">What to mind, a sentence.</param>
/// <param name="Length">Size along; above 0.</param>
/// <param name="Width">Size across; above 0.</param>
public sealed record Template(string Name, string Note, Length Length, Length Width)
{
    /// <summary>Its lines.</summary>
    public IReadOnlyList<TemplateLine> Lines { get; init; } = [];

    /// <summary>Its circles.</summary>
    public IReadOnlyList<TemplateCircle> Circles { get; init; } = [];

    /// <summary>Its words.</summary>
    public IReadOnlyList<TemplateWord> Words { get; init; } = [];
}

/// <summary>A run of straight lines.</summary>
/// <param name="Points">Its corners; two and more.</param>
/// <param name="Kind">What is done along it.</param>
/// <param name="IsClosed">Whether it goes back to its first corner.</param>
public sealed record TemplateLine(IReadOnlyList<SheetPoint> Points, TemplateLineKind Kind, bool IsClosed = false);

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Diameter">Its diameter; above 0.</param>
/// <param name="Kind">What is done along it.</param>
public sealed record TemplateCircle(SheetPoint Centre, Length Diameter, TemplateLineKind Kind);

/// <summary>Words at a place.</summary>
/// <param name="At">Where their middle stands.</param>
/// <param name="Text">The words.</param>
public sealed record TemplateWord(SheetPoint At, string Text);

/// <summary>What is done along a line of a template.</summary>
public enum TemplateLineKind
{
    /// <summary>It is cut.</summary>
    Cut,

    /// <summary>It is marked on the piece.</summary>
    Mark,

    /// <summary>A centre line.</summary>
    Centre,

    /// <summary>The direction of the grain or of the first ply, with an arrow at its end.</summary>
    Grain,
}
