namespace NotebookKit.Runner.Pages;

/// <summary>Where a link of a notebook leads on its page.</summary>
internal static class PageLinks
{
    private const string NotebookEnding = ".ipynb";

    /// <summary>The link's target on the page; none where it leads to a file that isn't beside the page.</summary>
    /// <param name="url">Target in the notebook.</param>
    /// <param name="hasPage">Whether a notebook of this name has a page.</param>
    public static string? Rewrite(string url, Func<string, bool> hasPage)
    {
        if (url.StartsWith('#')) return url;
        if (Uri.TryCreate(url, UriKind.Absolute, out var absolute))
            return absolute.Scheme is "http" or "https" or "mailto" ? url : null;
        var hash = url.IndexOf('#', StringComparison.Ordinal);
        var (path, place) = hash < 0 ? (url, "") : (url[..hash], url[hash..]);
        return path.EndsWith(NotebookEnding, StringComparison.Ordinal) && !path.Contains('/', StringComparison.Ordinal)
            && hasPage(Uri.UnescapeDataString(path[..^NotebookEnding.Length]))
            ? path[..^NotebookEnding.Length] + ".html" + place
            : null;
    }
}
