using NotebookKit.Filling.Supply;
using NotebookKit.Provenance;

namespace NotebookKit.Filling.Networks;

/// <summary>A cylinder that empties and cools; its wall gives its gas 20 W/(m² K) (typical).</summary>
/// <param name="Cylinder">Volume and pressure at the start.</param>
public sealed record CylinderNode(SourceCylinder Cylinder) : PadNode(Cylinder.Name)
{
    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() => Cylinder.Validate();
}
