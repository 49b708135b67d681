using System.Reflection;
using NotebookKit.Interactive;
using NotebookKit.Interactive.Help;

namespace NotebookKit.Runner.Engine;

/// <summary>What a first cell may use without asking: the library, its charts, logs and commands, and units.</summary>
internal static class SessionPreload
{
    private static readonly string[] Ours = ["NotebookKit", "NotebookKit.Charts", "NotebookKit.Logs", "NotebookKit.Interactive"];

    // What the public members of ours speak of, so that a cell may too.
    private static readonly string[] Theirs =
        ["UnitsNet", "MathNet.Numerics", "Plotly.NET", "DynamicObj", "Deedle", "FSharp.Core", "Microsoft.DotNet.Interactive",
            "Microsoft.DotNet.Interactive.Formatting"];

    /// <summary>Files of the assemblies that cells are compiled against: those this process itself has loaded.</summary>
    public static IReadOnlyList<string> AssemblyFiles() =>
        [.. Ours.Concat(Theirs).Select(Find).OfType<Assembly>().Select(a => a.Location).Where(l => l.Length > 0)];

    /// <summary>The using lines every session starts with.</summary>
    public static string Usings() => string.Join('\n', Namespaces().Select(n => $"using {n};")
        .Append($"using static {typeof(KitHelp).FullName};"));

    /// <summary>The namespaces every session starts with.</summary>
    public static IReadOnlyList<string> Namespaces() =>
    [
        .. OurNamespaces.All.Concat(["System.IO", "System.Threading"]).Order(StringComparer.Ordinal),
    ];

    private static Assembly? Find(string name)
    {
        try
        {
            return Assembly.Load(name);
        }
        catch (FileNotFoundException)
        {
            return null;
        }
    }
}
