namespace NotebookKit.Runner.Pages;

/// <summary>The fixed parts of a page: style sheet, script, equation setter. All are inside this program.</summary>
internal static class PageResources
{
    /// <summary>The style sheet of every page.</summary>
    public static string Style { get; } = Read("page.css");

    /// <summary>The small script of every page: folds code and draws figures.</summary>
    public static string Script { get; } = Read("page.js");

    /// <summary>The font of equations as a style rule: without one that says how roots and brackets grow, a page shows another
    /// formula.</summary>
    public static string MathFont { get; } =
        $"@font-face {{ font-family: \"NotebookKit Math\"; src: url(data:font/woff2;base64,{Font()}) format(\"woff2\"); }}\n";

    /// <summary>Source of the equation setter.</summary>
    public static string EquationSetter => Read("temml.min.js");

    private static string Read(string name)
    {
        using var reader = new StreamReader(Open(name));
        return reader.ReadToEnd();
    }

    private static string Font()
    {
        using var stream = Open("notebookkit-math.woff2");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return Convert.ToBase64String(bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
    }

    private static Stream Open(string name) => typeof(PageResources).Assembly.GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"The program was built without its part {name}. Build it again.");
}
