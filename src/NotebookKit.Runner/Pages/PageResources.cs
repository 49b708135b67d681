using System.Reflection;

namespace NotebookKit.Runner.Pages;

/// <summary>The fixed parts of a page: style sheet, equation setter, chart library. All are inside this program or its packages.</summary>
internal static class PageResources
{
    private static readonly Lazy<string> StyleText = new(() => ReadOwn("page.css"));
    private static readonly Lazy<string> ChartLibraryText = new(ReadChartLibrary);

    /// <summary>The style sheet of every page.</summary>
    public static string Style => StyleText.Value;

    /// <summary>The small script of every page: folds code and draws figures.</summary>
    public static string Script { get; } = ReadOwn("page.js");

    /// <summary>plotly.js, whole.</summary>
    public static string ChartLibrary => ChartLibraryText.Value;

    /// <summary>Source of the equation setter.</summary>
    public static string EquationSetter => ReadOwn("temml.min.js");

    private static string ReadOwn(string name) => Read(typeof(PageResources).Assembly, name);

    private static string ReadChartLibrary()
    {
        var assembly = Assembly.Load("Plotly.NET");
        var name = assembly.GetManifestResourceNames().Single(n => n.EndsWith(".min.js", StringComparison.Ordinal) && n.Contains("plotly", StringComparison.Ordinal));
        return Read(assembly, name);
    }

    private static string Read(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program was built without its part {name}. Build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
