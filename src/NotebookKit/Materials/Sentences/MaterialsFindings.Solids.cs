using NotebookKit.Provenance;

namespace NotebookKit.Materials;

internal static partial class MaterialsFindings
{
    // Materials/Solids/Braid
    internal static Finding CarrierCountOutOfRange(string name, int carriers) =>
        Finding.Error($"{name}: carriers is {carriers}; it must be an even number, 4 to 2000. Half of them run each way.");

    // Materials/Solids/MaterialLibrary
    internal static Finding MaterialHasNoName() => Finding.Error("The material has no name; give it one.");

    internal static Finding MaterialNameIsTaken(string materialName) =>
        Finding.Error($"\"{materialName}\" is already the name of another kind of material; choose another name.");
}
