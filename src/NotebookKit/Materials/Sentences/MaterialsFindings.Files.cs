using NotebookKit.Provenance;

namespace NotebookKit.Materials;

/// <summary>The sentences of materials's findings, in one place.</summary>
internal static partial class MaterialsFindings
{
    // Materials/Files/MaterialFile
    internal static Finding LineIsNotJson(string name, long? lineNumber, string errorMessage) =>
        Finding.Error(
            $"{name}, line {lineNumber}: the line isn't JSON ({errorMessage}). Look for a missing comma, quote or bracket "
            + "in this line or just above.");

    internal static Finding FileIsNotOneObject(string name, int line, IEnumerable<string> lists) =>
        Finding.Error($"{name}, line {line}: the file must be one object in braces with lists named {string.Join(", ", lists)}.");

    // Materials/Files/MaterialFileEntry
    internal static Finding LineIsWrong(string file, int line, string what) => Finding.Error($"{file}, line {line}: {what}.");
}
