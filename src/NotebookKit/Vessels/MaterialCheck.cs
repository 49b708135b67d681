using System.Runtime.CompilerServices;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels;

/// <summary>What is wrong with a material, looked for once: a search lays thousands of vessels of the same few.</summary>
internal static class MaterialCheck
{
    // Materials never change, so neither does what is wrong with them.
    private static readonly ConditionalWeakTable<IMaterial, IReadOnlyList<Finding>> Known = [];

    /// <summary>The same as its own validation says.</summary>
    public static IReadOnlyList<Finding> Checked(this IMaterial material) => Known.GetValue(material, m => m.Validate());
}
