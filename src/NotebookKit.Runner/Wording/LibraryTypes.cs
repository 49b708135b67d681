using System.Reflection;
using System.Runtime.CompilerServices;
using NotebookKit.Charts;
using NotebookKit.Interactive;
using NotebookKit.Logs;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Runner.Wording;

/// <summary>The public types that a cell may name, and what they have.</summary>
internal static class LibraryTypes
{
    private static readonly Lazy<IReadOnlyList<Type>> Types = new(() =>
        [.. new[] { typeof(IResult), typeof(EngineeringChart), typeof(LogReader), typeof(Session), typeof(Length) }
            .SelectMany(t => t.Assembly.GetExportedTypes())]);

    private static readonly Lazy<IReadOnlyList<MethodInfo>> Extensions = new(() =>
        [.. Types.Value.Where(t => t is { IsAbstract: true, IsSealed: true })
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .Where(m => m.IsDefined(typeof(ExtensionAttribute), inherit: false))]);

    /// <summary>Names of all of them.</summary>
    public static IEnumerable<string> Names => Types.Value.Select(t => Bare(t.Name));

    /// <summary>The type of a name as the compiler writes it, namespace included or not; none where it isn't one of these.</summary>
    /// <param name="name">Name.</param>
    public static Type? Find(string name)
    {
        var bare = name.Split('<')[0].TrimEnd('?').Split('.')[^1];
        return Types.Value.FirstOrDefault(t => t.Name == bare && (!name.Contains('.', StringComparison.Ordinal) || t.FullName == name))
            ?? Types.Value.FirstOrDefault(t => Bare(t.Name) == bare);
    }

    /// <summary>What stands behind the dot of a value of a type: "Burst()", "Bore".</summary>
    /// <param name="type">Type.</param>
    /// <param name="isStatic">Whether the type itself stands before the dot.</param>
    public static IEnumerable<string> MembersOf(Type type, bool isStatic)
    {
        var flags = BindingFlags.Public | BindingFlags.FlattenHierarchy | (isStatic ? BindingFlags.Static : BindingFlags.Instance);
        return type.GetMembers(flags).Where(m => m is not (MethodBase { IsSpecialName: true } or Type))
            .Where(m => m.DeclaringType != typeof(object)).Select(m => m is MethodInfo ? m.Name + "()" : m.Name)
            .Concat(isStatic ? [] : VerbsOf(type).Select(m => m.Name + "()"));
    }

    /// <summary>Properties that <c>with { ... }</c> may set.</summary>
    /// <param name="type">Type of the value.</param>
    public static IEnumerable<string> SettableOf(Type type) => type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(p => p.SetMethod is { IsPublic: true } && p.GetIndexParameters().Length == 0).Select(p => p.Name);

    /// <summary>Literals that make a quantity of a number, such as Millimetres, in the order in which the library has them.</summary>
    /// <param name="quantity">Name of the quantity's type.</param>
    public static IReadOnlyList<string> LiteralsOf(string quantity) => [.. Extensions.Value
        .Where(m => m.DeclaringType!.Name.EndsWith("Literals", StringComparison.Ordinal) && m.IsGenericMethodDefinition
            && m.GetParameters().Length == 1 && m.ReturnType.Name == quantity)
        .Select(m => m.Name).Distinct()];

    /// <summary>Every literal that gives a number its unit.</summary>
    public static IEnumerable<string> AllLiterals => Extensions.Value
        .Where(m => m.DeclaringType!.Name.EndsWith("Literals", StringComparison.Ordinal)).Select(m => m.Name).Distinct();

    private static IEnumerable<MethodInfo> VerbsOf(Type type) =>
        Extensions.Value.Where(m => m.GetParameters()[0].ParameterType is { IsGenericParameter: false } first
            && first.IsAssignableFrom(type));

    private static string Bare(string name) => name.Split('`')[0];
}
