using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;

namespace NotebookKit.Runner.Engine;

/// <summary>
/// What the compiler makes of several texts put together: an array on the stack, reached by means that no cell may use. They are the
/// compiler's where nothing but the type of its own in the cell's assembly names them.
/// </summary>
internal static class CompilerSpans
{
    // No name that a cell could give; the number of the cell follows.
    private const string Own = "<PrivateImplementationDetails>";

    private const BindingFlags All = BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic
        | BindingFlags.DeclaredOnly;

    /// <summary>The means.</summary>
    public static IReadOnlySet<string> Types { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        "System.Runtime.CompilerServices.Unsafe", "System.Runtime.InteropServices.MemoryMarshal",
    };

    /// <summary>Whether no code of a cell itself names them.</summary>
    /// <param name="script">What the cell was compiled to.</param>
    /// <param name="reader">Its metadata.</param>
    public static bool AreTheCompilers(Assembly script, MetadataReader reader)
    {
        var members = reader.MemberReferences.Where(h => CellTraces.OwnerOf(reader, reader.GetMemberReference(h).Parent) is { } owner
            && Types.Contains(CellTraces.NameOf(reader, owner))).Select(h => (EntityHandle)h).ToHashSet();
        if (members.Count == 0) return true;
        HashSet<int> tokens = [.. members.Select(h => MetadataTokens.GetToken(h)), .. Enumerable.Range(1,
            reader.GetTableRowCount(TableIndex.MethodSpec)).Select(MetadataTokens.MethodSpecificationHandle)
            .Where(h => members.Contains(reader.GetMethodSpecification(h).Method)).Select(h => MetadataTokens.GetToken(h))];
        return !script.GetTypes().Where(t => !t.FullName!.StartsWith(Own, StringComparison.Ordinal))
            .SelectMany(t => t.GetMethods(All).Cast<MethodBase>().Concat(t.GetConstructors(All))).Any(m => Names(m, tokens));
    }

    // Four bytes that only look like a token end the process one notebook early; none is missed.
    private static bool Names(MethodBase method, HashSet<int> tokens)
    {
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (var i = 0; i + 4 <= code.Length; i++)
            if (tokens.Contains(BitConverter.ToInt32(code, i))) return true;
        return false;
    }
}
