using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>The sleeves are carried over the closure and hold it in: no bond takes the thrust. Cloth and hoop wraps stop at the straight
/// part.</summary>
/// <remarks>Source: common practice, no source, for the share it delivers.</remarks>
public sealed record CarriedSleeve : EndJoint
{
    /// <summary>Share of the straight part's strength that yarns deliver bent over the closure's edge; 30 to 100 %.</summary>
    public Ratio Delivers { get; init; } = 85.Percent();

    /// <inheritdoc/>
    public override string Name => "sleeve carried over";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore) =>
        new ValidRange<Ratio>(30.Percent(), 100.Percent()).Find(Delivers, "share delivered over the closure",
            "85 % is assumed; a sharp edge takes more away.") is { } finding ? [finding] : [];
}
