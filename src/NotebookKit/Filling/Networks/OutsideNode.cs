using NotebookKit.Provenance;

namespace NotebookKit.Filling.Networks;

/// <summary>The air outside, which a vent or a relief valve opens to.</summary>
/// <param name="Name">What it is called; "outside" unless given.</param>
public sealed record OutsideNode(string Name = "outside") : PadNode(Name)
{
    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() => [];

    internal override bool IsPart => false;
}
