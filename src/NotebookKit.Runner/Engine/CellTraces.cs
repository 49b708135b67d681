using System.Reflection;
using System.Reflection.Metadata;
using System.Runtime.InteropServices;

namespace NotebookKit.Runner.Engine;

/// <summary>
/// Whether the cells of a session can have left anything in their process. It is read from what they were compiled to, which names every
/// type and member that they touch: all has to stand in a list of what leaves nothing. What isn't listed, may.
/// </summary>
internal static class CellTraces
{
    // How the script engine names what it makes of cells.
    private const string Scripts = "\u211b*";

    // Ours answer by what they are given alone, which tests of the house hold them to; units are values.
    private static readonly HashSet<string> Assemblies = new(StringComparer.Ordinal)
    {
        "NotebookKit", "NotebookKit.Charts", "NotebookKit.Logs", "NotebookKit.Interactive", "UnitsNet",
    };

    // What a cell may do to the process by way of ours.
    private static readonly string[] Refused =
    [
        "NotebookKit.Numerics.WorkRun", "NotebookKit.Interactive.NotebookKitExtension", "NotebookKit.Interactive.Live.FrontEnd",
        "UnitsNet.UnitConverter", "UnitsNet.UnitAbbreviationsCache", "UnitsNet.UnitParser", "UnitsNet.UnitsNetSetup",
    ];

    private static readonly HashSet<string> Types = new(StringComparer.Ordinal)
    {
        "System.Object", "System.String", "System.Char", "System.Boolean", "System.Byte", "System.Int32", "System.Int64", "System.Double",
        "System.Void", "System.Math", "System.Nullable`1", "System.Array", "System.Index", "System.Range", "System.Enum",
        "System.ValueType",
        "System.DateOnly", "System.DateTime", "System.TimeSpan", "System.Exception", "System.InvalidOperationException",
        "System.ArgumentException", "System.IDisposable", "System.IEquatable`1", "System.IComparable`1", "System.IFormatProvider",
        "System.StringComparison", "System.StringComparer", "System.MathF", "System.Decimal", "System.UInt32", "System.UInt64",
        "System.ReadOnlySpan`1", "System.Span`1", "System.Attribute", "System.MidpointRounding", "System.FormattableString",
        "System.Linq.Enumerable", "System.Linq.IGrouping`2", "System.Linq.IOrderedEnumerable`1", "System.Collections.IEnumerable",
        "System.Collections.IEnumerator", "System.Collections.IStructuralEquatable", "System.Collections.IStructuralComparable",
        "System.Text.StringBuilder", "System.RuntimeTypeHandle", "System.RuntimeFieldHandle",
        "System.Random", "System.IO.Path", "System.Collections.ICollection", "System.Collections.IList", "System.NotSupportedException",
        "System.IndexOutOfRangeException", "System.Threading.CancellationToken", "System.IProgress`1", "System.ParamArrayAttribute",
        "System.DateTimeOffset", "System.Guid", "System.TimeProvider", "System.Security.Permissions.SecurityAction",
        "System.Security.Permissions.SecurityPermissionAttribute", "System.Security.UnverifiableCodeAttribute",
    };

    // Named by what the compiler makes of every cell; nothing of theirs may be used.
    private static readonly string[] NamedOnly = ["Microsoft.DotNet.Interactive.Kernel", "System.Threading.Tasks.Task`1"];

    // Of types that can do more.
    private static readonly HashSet<string> Members = new(StringComparer.Ordinal)
    {
        "System.Console.Write", "System.Console.WriteLine", "System.Globalization.CultureInfo.get_InvariantCulture",
        "System.IO.File.ReadAllText", "System.IO.File.ReadAllLines", "System.IO.File.Exists",
        "System.IO.File.Delete", "System.Type.GetTypeFromHandle",
        "System.Type.op_Equality", "System.Type.op_Inequality", "System.Environment.get_ProcessId",
        "System.Runtime.CompilerServices.RuntimeHelpers.EnsureSufficientExecutionStack",
        "System.Runtime.CompilerServices.RuntimeHelpers.InitializeArray",
    };

    // The compiler's own, which no code of a cell names.
    private static bool OfTheCompiler(string type) =>
        type.StartsWith("System.Runtime.CompilerServices.", StringComparison.Ordinal)
            && (type.EndsWith("Attribute", StringComparison.Ordinal) || type.Contains("TaskMethodBuilder", StringComparison.Ordinal)
                || type.EndsWith("StateMachine", StringComparison.Ordinal) || type.EndsWith("Completion", StringComparison.Ordinal)
                || type.EndsWith("InterpolatedStringHandler", StringComparison.Ordinal)
                || type.EndsWith(".IsExternalInit", StringComparison.Ordinal))
        || type.StartsWith("System.Func`", StringComparison.Ordinal)
        || type == "System.Predicate`1" || type.StartsWith("System.Action", StringComparison.Ordinal)
        || type.StartsWith("System.ValueTuple", StringComparison.Ordinal) || type.StartsWith("System.Tuple", StringComparison.Ordinal)
        || type.StartsWith("System.Diagnostics.Debugg", StringComparison.Ordinal);

    /// <summary>What the cells touched that may leave something behind; empty where nothing did.</summary>
    public static IReadOnlyList<string> Found()
    {
        var loaded = AppDomain.CurrentDomain.GetAssemblies().Where(a => !a.IsDynamic).ToLookup(IsScript);
        return [.. loaded[true].SelectMany(In).Concat(loaded[false].Where(a => !CameWithUs(a)).Select(a => a.GetName().Name!)).Distinct()];
    }

    private static bool IsScript(Assembly assembly) =>
        assembly.GetName().Name?.StartsWith(Scripts, StringComparison.Ordinal) == true;

    // An assembly that a cell referenced stays, and would stand in for another build of it.
    private static bool CameWithUs(Assembly assembly) =>
        assembly.Location.StartsWith(AppContext.BaseDirectory, StringComparison.Ordinal)
        || assembly.Location.StartsWith(RuntimeEnvironment.GetRuntimeDirectory(), StringComparison.Ordinal);

    private static unsafe IEnumerable<string> In(Assembly script)
    {
        if (!script.TryGetRawMetadata(out var blob, out var length)) return ["a cell that can't be read"];
        var reader = new MetadataReader(blob, length);
        var found = new List<string>();
        var partly = Members.Select(m => m[..m.LastIndexOf('.')]).Concat(NamedOnly).ToHashSet(StringComparer.Ordinal);
        if (CompilerSpans.AreTheCompilers(script, reader)) partly.UnionWith(CompilerSpans.Types);
        foreach (var handle in reader.TypeReferences)
        {
            var name = NameOf(reader, handle);
            if (!Allowed(reader, handle) && !partly.Contains(name)) found.Add(name);
        }

        foreach (var handle in reader.MemberReferences)
        {
            var member = reader.GetMemberReference(handle);
            if (OwnerOf(reader, member.Parent) is not { } owner || Allowed(reader, owner)) continue;
            var type = NameOf(reader, owner);
            var name = $"{type}.{reader.GetString(member.Name)}";
            if (!Members.Contains(name) && !(partly.Contains(type) && CompilerSpans.Types.Contains(type))) found.Add(name);
        }

        foreach (var handle in reader.MethodDefinitions)
        {
            var method = reader.GetMethodDefinition(handle);
            if ((method.Attributes & MethodAttributes.PinvokeImpl) != 0) found.Add("native code");
        }

        return found;
    }

    private static bool Allowed(MetadataReader reader, TypeReferenceHandle handle)
    {
        var type = NameOf(reader, handle);
        var assembly = AssemblyOf(reader, handle);
        return assembly.StartsWith(Scripts, StringComparison.Ordinal)
            || (Assemblies.Contains(assembly) && !Refused.Contains(type))
            || (assembly.StartsWith("System.", StringComparison.Ordinal) && (Types.Contains(type) || OfTheCompiler(type)
                || type.StartsWith("System.Collections.Generic.", StringComparison.Ordinal)));
    }

    private static string AssemblyOf(MetadataReader reader, TypeReferenceHandle handle)
    {
        var scope = reader.GetTypeReference(handle).ResolutionScope;
        return scope.Kind switch
        {
            HandleKind.TypeReference => AssemblyOf(reader, (TypeReferenceHandle)scope),
            HandleKind.AssemblyReference => reader.GetString(reader.GetAssemblyReference((AssemblyReferenceHandle)scope).Name),
            _ => "",
        };
    }

    // None for what a cell itself defines, and for arrays.
    internal static TypeReferenceHandle? OwnerOf(MetadataReader reader, EntityHandle owner)
    {
        if (owner.Kind == HandleKind.TypeSpecification)
        {
            var signature = reader.GetBlobReader(reader.GetTypeSpecification((TypeSpecificationHandle)owner).Signature);
            if (signature.ReadSignatureTypeCode() != SignatureTypeCode.GenericTypeInstance) return null;
            signature.ReadByte();
            owner = signature.ReadTypeHandle();
        }

        return owner.Kind == HandleKind.TypeReference ? (TypeReferenceHandle)owner : null;
    }

    internal static string NameOf(MetadataReader reader, TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        var name = reader.GetString(type.Name);
        if (type.ResolutionScope.Kind == HandleKind.TypeReference)
            return NameOf(reader, (TypeReferenceHandle)type.ResolutionScope) + "+" + name;
        var space = reader.GetString(type.Namespace);
        return space.Length == 0 ? name : $"{space}.{name}";
    }
}
