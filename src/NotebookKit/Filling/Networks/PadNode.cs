using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Networks;

/// <summary>A place of a pad's network where gas stands: a cylinder, a supply, a vessel, a junction, the air outside.</summary>
/// <param name="Name">What it is called; links name it.</param>
public abstract record PadNode(string Name)
{
    /// <summary>Pressure that its maker or a test rates it to; none where that isn't given.</summary>
    public virtual GaugePressure? RatedTo { get; init; }

    /// <summary>Day of its last proof or test; none where that isn't given.</summary>
    public DateOnly? ProvedOn { get; init; }

    /// <summary>Everything wrong with it.</summary>
    public abstract IReadOnlyList<Finding> Validate();

    /// <summary>Whether it is something that a rating is asked of.</summary>
    internal virtual bool IsPart => true;
}
