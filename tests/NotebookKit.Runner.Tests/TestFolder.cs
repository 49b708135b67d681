namespace NotebookKit.Runner.Tests;

/// <summary>A folder for one test, gone afterwards.</summary>
internal sealed class TestFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("notebookkit-test-").FullName;

    public static string Fixture(string name) => System.IO.Path.Combine(AppContext.BaseDirectory, "Fixtures", name);

    public string this[params string[] parts] => System.IO.Path.Combine([Path, .. parts]);

    public string CopyOf(string fixture)
    {
        var copy = this[fixture];
        File.Copy(Fixture(fixture), copy);
        return copy;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
