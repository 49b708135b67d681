using NotebookKit.Provenance;

namespace NotebookKit.Filling.Networks;

/// <summary>A tee or a manifold: gas meets and parts there, and so little of it stands there that it isn't followed.</summary>
/// <param name="Name">What it is called.</param>
public sealed record JunctionNode(string Name) : PadNode(Name)
{
    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() => [];
}
