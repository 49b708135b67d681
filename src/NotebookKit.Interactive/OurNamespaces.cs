using System.Reflection;
using NotebookKit.Charts;
using NotebookKit.Logs;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Interactive;

/// <summary>The namespaces that a notebook works with.</summary>
public static class OurNamespaces
{
    /// <summary>Every namespace of ours with something public in it, and that of the units, in order.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. new[] { typeof(IResult).Assembly, typeof(EngineeringChart).Assembly, typeof(LogReader).Assembly, typeof(OurNamespaces).Assembly }
            .SelectMany(Exported)
            .Select(t => t.Namespace)
            .OfType<string>()
            .Append(typeof(IQuantity).Namespace!)
            .Distinct()
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The lines that bring them into a cell.</summary>
    public static string Usings => string.Join('\n', All.Select(n => $"using {n};")
        .Append($"using static {typeof(Help.KitHelp).FullName};"));

    // A kernel that isn't ours may lack what an assembly of ours stands on; what can be loaded counts.
    private static IEnumerable<Type> Exported(Assembly assembly)
    {
        try
        {
            return assembly.GetExportedTypes();
        }
        catch (Exception e) when (e is FileNotFoundException or FileLoadException or TypeLoadException)
        {
            return [];
        }
    }
}
