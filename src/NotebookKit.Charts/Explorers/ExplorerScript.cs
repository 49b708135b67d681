namespace NotebookKit.Charts.Explorers;

/// <summary>The script that makes explorers answer. It asks for no network and touches only elements of class <c>nk-explorer</c>.</summary>
public static class ExplorerScript
{
    private static readonly Lazy<string> Loaded = new(() =>
    {
        using var stream = typeof(ExplorerScript).Assembly.GetManifestResourceStream("NotebookKit.Charts.Explorers.explorer.js")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    });

    /// <summary>The script; a page that lets only known scripts run needs the hash of exactly this text.</summary>
    public static string Text => Loaded.Value;
}
