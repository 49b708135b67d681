namespace NotebookKit.Runner.Commands;

/// <summary>Where things lie when the command line doesn't say.</summary>
/// <param name="Root">Folder that holds the solution.</param>
internal sealed record RepositoryFolders(string Root)
{
    private const string Mark = "NotebookKit.sln";

    /// <summary>The notebooks.</summary>
    public string Notebooks => Path.Combine(Root, "notebooks");

    /// <summary>What a run makes.</summary>
    public string Output => Path.Combine(Root, "out");

    /// <summary>Looks upward from the current folder, then from the program's own.</summary>
    /// <exception cref="RequestException">Neither lies in the repository.</exception>
    public static RepositoryFolders Find() => TryFind()
        ?? throw new RequestException($"No {Mark} in this folder or above it. Go into the repository, or name notebooks and --out.");

    /// <summary>The same; none where neither lies in the repository.</summary>
    public static RepositoryFolders? TryFind() => Above(Directory.GetCurrentDirectory()) ?? Above(AppContext.BaseDirectory);

    private static RepositoryFolders? Above(string folder)
    {
        for (var at = new DirectoryInfo(folder); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, Mark))) return new RepositoryFolders(at.FullName);
        return null;
    }
}
