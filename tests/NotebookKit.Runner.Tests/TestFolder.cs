namespace NotebookKit.Runner.Tests;

/// <summary>A folder for one test, gone afterwards.</summary>
internal sealed class TestFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("notebookkit-test-").FullName;

    /// <summary>The repository that the tests lie in.</summary>
    public static string Repository { get; } = FindRepository();

    public static string Fixture(string name) => System.IO.Path.Combine(AppContext.BaseDirectory, "Fixtures", name);

    public string this[params string[] parts] => System.IO.Path.Combine([Path, .. parts]);

    public string CopyOf(string fixture)
    {
        var copy = this[fixture];
        File.Copy(Fixture(fixture), copy);
        return copy;
    }

    private static string FindRepository()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(System.IO.Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests do not lie in the repository.");
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
