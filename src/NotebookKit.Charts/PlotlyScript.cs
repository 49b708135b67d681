using Plotly.NET;

namespace NotebookKit.Charts;

/// <summary>The one copy of plotly.js that an exported page needs, taken from the Plotly.NET package, so that no network is asked. Its
/// licence (MIT) stands in its first lines.</summary>
public static class PlotlyScript
{
    private static readonly Lazy<string> Loaded = new(Load);

    /// <summary>
    /// The script, to stand once inside a script element before the first figure. Names that a module loader defines are hidden from it, so
    /// that it sets <c>window.Plotly</c> whether the page has a loader or not; a second copy does nothing.
    /// </summary>
    public static string Wrapped => Loaded.Value;

    private static string Load()
    {
        var assembly = typeof(GenericChart).Assembly;
        var name = assembly.GetManifestResourceNames().SingleOrDefault(n => n.Contains("plotly-", StringComparison.Ordinal)
            && n.EndsWith(".min.js", StringComparison.Ordinal))
            ?? throw new InvalidOperationException(
                $"{assembly.GetName().Name} {assembly.GetName().Version} carries no plotly.js; restore the packages in the versions of "
                    + "Directory.Packages.props.");
        using var stream = assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return "if(!window.Plotly){(function(){var define,module,exports;\n" + reader.ReadToEnd() + "\n}).call(window);}";
    }
}
