using System.Security.Cryptography;

namespace NotebookKit.Runner.Tests.Running;

/// <summary>The tests that look at the one run of all fixtures.</summary>
[CollectionDefinition(Name)]
public sealed class AllFixturesTests : ICollectionFixture<AllFixturesRun>
{
    public const string Name = "all fixtures";
}

/// <summary>All fixture notebooks run once by the real program; the tests look at what came of it.</summary>
public sealed class AllFixturesRun : IAsyncLifetime, IDisposable
{
    private readonly TestFolder folder = new();
    private readonly Dictionary<string, string> hashesBefore = [];

    internal ProgramRun Run { get; private set; } = null!;

    public string Output => folder["out"];

    public string Page(string name) => File.ReadAllText(Path.Combine(Output, "pages", name + ".html"));

    public string Executed(string name) => File.ReadAllText(Path.Combine(Output, "notebooks", name + ".ipynb"));

    public string Input(string name) => folder["notebooks", name + ".ipynb"];

    public IEnumerable<string> ChangedInputs() => hashesBefore.Where(p => HashOf(p.Key) != p.Value).Select(p => p.Key);

    /// <summary>The lines of the summary that speak of one notebook's failure.</summary>
    public string Failure(string name)
    {
        var lines = Run.Output.Split('\n');
        var start = Array.FindIndex(lines, l => l.StartsWith(name + ": ", StringComparison.Ordinal));
        return start < 0 ? "" : string.Join('\n', lines.Skip(start).TakeWhile(l => l.Length > 0));
    }

    public async Task InitializeAsync()
    {
        Directory.CreateDirectory(folder["notebooks"]);
        foreach (var file in Directory.EnumerateFiles(TestFolder.Fixture("")))
        {
            var copy = folder["notebooks", Path.GetFileName(file)];
            File.Copy(file, copy);
            hashesBefore[copy] = HashOf(copy);
        }

        Run = await ProgramRun.RunAsync(
            "run", folder["notebooks"], folder["notebooks", "missing.ipynb"], "--out", Output, "--cell-limit", "30s", "--jobs", "3");
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => folder.Dispose();

    private static string HashOf(string path) => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path)));
}
