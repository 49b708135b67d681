using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Notebooks.Tests;

/// <summary>The notebooks of the repository.</summary>
internal static class NotebookFolder
{
    private const string Ending = ".ipynb";

    public static string Path { get; } = System.IO.Path.Combine(Root(), "notebooks");

    public static IReadOnlyList<string> Names { get; } = Directory.Exists(Path)
        ? [.. Directory.EnumerateFiles(Path, "*" + Ending).Select(f =>
            System.IO.Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)]
        : [];

    public static TheoryData<string> Cases => [.. Names];

    public static string FileOf(string name) => System.IO.Path.Combine(Path, name + Ending);

    public static NotebookFile Read(string name) => NotebookFile.Read(FileOf(name));

    private static string Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(System.IO.Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests do not lie in the repository.");
    }
}
