using System.Reflection;
using System.Xml.Linq;

namespace NotebookKit.Tests.House;

/// <summary>Where the sources and the built library are, for tests that read them.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static Assembly Library { get; } = typeof(NotebookKit.Quantities.GaugePressure).Assembly;

    public static IReadOnlyDictionary<string, XElement> Documentation { get; } =
        XDocument.Load(Path.ChangeExtension(Library.Location, ".xml")).Descendants("member")
            .ToDictionary(m => m.Attribute("name")!.Value, m => m, StringComparer.Ordinal);

    public static IEnumerable<string> Sources(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "NotebookKit.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("NotebookKit.sln not found above the test's folder.");
    }
}
