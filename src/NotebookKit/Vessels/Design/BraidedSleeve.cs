using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Design;

/// <summary>A biaxial braided sleeve pulled over what lies beneath.</summary>
/// <param name="Braid">The sleeve.</param>
public sealed record BraidedSleeve(Braid Braid) : Ply
{
    /// <inheritdoc/>
    public override string Name => Braid.Name;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Overrides => Braid.Overrides;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() => [.. base.Validate(), .. Braid.Validate()];
}
