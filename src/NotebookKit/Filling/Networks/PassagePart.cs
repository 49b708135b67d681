using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;

namespace NotebookKit.Filling.Networks;

/// <summary>A part that only narrows the line: a drilled restrictor, a coupling, a filter.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Passage">What the gas has to squeeze through.</param>
public sealed record PassagePart(string Name, IRestrictor Passage) : LinePart(Name)
{
    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() => Passage.Validate();

    internal override IRestrictor Narrowest => Passage;
}
