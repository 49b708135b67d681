namespace NotebookKit.Runner.Commands;

/// <summary>Which files a command works on.</summary>
internal static class NotebookSelection
{
    private const string Pattern = "*.ipynb";

    /// <summary>The files named: files as they are, folders with all notebooks in them; all of the repository where nothing is
    /// named.</summary>
    /// <param name="named">Files and folders.</param>
    /// <exception cref="RequestException">There is nothing to run, or two would overwrite each other's results.</exception>
    public static IReadOnlyList<string> Choose(IReadOnlyList<string> named)
    {
        var places = named.Count > 0 ? named : [RepositoryFolders.Find().Notebooks];
        var files = places.SelectMany(p => Directory.Exists(p) ? In(p) : [p]).Select(Path.GetFullPath).Distinct().ToList();
        if (files.Count == 0) throw new RequestException($"There is no notebook in {string.Join(", ", places)}.");
        if (files.GroupBy(Path.GetFileNameWithoutExtension).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new RequestException($"Two notebooks are called {twice.Key}; their results would overwrite each other. Run them one at "
                + "a time with different --out.");
        return files;
    }

    private static IReadOnlyList<string> In(string folder)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder, Pattern).Where(f => !Path.GetFileName(f).StartsWith('.'))
                .Order(StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new RequestException($"The folder {folder} can't be read: {e.Message}");
        }
    }
}
