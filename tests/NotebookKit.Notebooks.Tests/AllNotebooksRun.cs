using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;

namespace NotebookKit.Notebooks.Tests;

/// <summary>The tests that look at the one run of all notebooks.</summary>
[CollectionDefinition(Name)]
public sealed class AllNotebooksTests : ICollectionFixture<AllNotebooksRun>
{
    public const string Name = "all notebooks";
}

/// <summary>All notebooks run once, as the main job runs them.</summary>
public sealed class AllNotebooksRun : IAsyncLifetime
{
    private readonly string output = Directory.CreateTempSubdirectory("notebookkit-notebooks-").FullName;

    public string Output => output;

    internal IReadOnlyDictionary<string, NotebookReport> Reports { get; private set; } = new Dictionary<string, NotebookReport>();

    public string PageOf(string name) => File.ReadAllText(Reports[name].PageFile!);

    public async Task InitializeAsync()
    {
        if (NotebookFolder.Names.Count == 0) return;
        var options = new RunOptions([.. NotebookFolder.Names.Select(NotebookFolder.FileOf)], output, TimeSpan.FromMinutes(3),
            RunOptions.UsualJobs);
        var reports = await new NotebookRunner(options, new Silence()).RunAsync(CancellationToken.None);
        Reports = reports.Reports.ToDictionary(r => r.Name);
    }

    public Task DisposeAsync()
    {
        Directory.Delete(output, recursive: true);
        return Task.CompletedTask;
    }

    private sealed class Silence : IRunDisplay
    {
        public void Started(string name, int cells)
        {
        }

        public void Running(string name, int cell, string? progress)
        {
        }

        public void Ended(NotebookReport report)
        {
        }
    }
}
