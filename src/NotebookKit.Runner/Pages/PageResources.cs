namespace NotebookKit.Runner.Pages;

/// <summary>The fixed parts of a page: style sheet, script, equation setter. All are inside this program.</summary>
internal static class PageResources
{
    /// <summary>The style sheet of every page.</summary>
    public static string Style { get; } = Read("page.css");

    /// <summary>The small script of every page: folds code and draws figures.</summary>
    public static string Script { get; } = Read("page.js");

    /// <summary>Source of the equation setter.</summary>
    public static string EquationSetter => Read("temml.min.js");

    private static string Read(string name)
    {
        using var stream = typeof(PageResources).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program was built without its part {name}. Build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
