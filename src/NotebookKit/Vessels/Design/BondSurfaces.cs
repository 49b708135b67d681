using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Design;

/// <summary>What is wrong with the surfaces of a bond.</summary>
internal static class BondSurfaces
{
    /// <summary>An error where a surface is an untreated plastic; none else.</summary>
    public static Finding? Find(BondSurface surface, string part, Adhesive adhesive) => surface == BondSurface.UntreatedPlastic
        ? VesselsFindings.UntreatedSurface(part, adhesive.Name, adhesive.OnAbradedPlastic.Value)
        : null;
}
