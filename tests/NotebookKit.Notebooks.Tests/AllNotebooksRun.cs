using NotebookKit.Notebooks.Tests.Pages;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;
using NotebookKit.Runner.Tests;

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

    /// <summary>What the pages showed in a browser.</summary>
    internal PageVisits Visits { get; private set; } = null!;

    public string PageOf(string name) => File.ReadAllText(Reports[name].PageFile!);

    public async Task InitializeAsync()
    {
        Visits = new(output);
        if (NotebookFolder.Names.Count == 0) return;
        var options = new RunOptions([.. NotebookFolder.Names.Select(NotebookFolder.FileOf)], output, Patience.Limit,
            RunOptions.UsualJobs);
        var reports = await new NotebookRunner(options, new Silence()).RunAsync(CancellationToken.None);
        Reports = reports.Reports.ToDictionary(r => r.Name);
    }

    public async Task DisposeAsync()
    {
        await Visits.EndAsync();
        Directory.Delete(output, recursive: true);
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
