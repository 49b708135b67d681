namespace NotebookKit.Runner.Tests.Batch;

/// <summary>One notebook with two dispersions of 23 and 9 flights, run whole, in one shard and in three, by the real program.</summary>
public sealed class SplitRun : IAsyncLifetime, IDisposable
{
    private readonly TestFolder folder = new();

    /// <summary>Folder of the ordinary run.</summary>
    public string Whole => folder["whole"];

    /// <summary>Folder of the run in one shard, merged.</summary>
    public string One => folder["one"];

    /// <summary>Folder of the run in three shards, merged.</summary>
    public string Three => folder["three"];

    /// <summary>The same notebook.</summary>
    public string Notebook => folder["scatters.ipynb"];

    /// <summary>Shard files of one of three, in the order of their names.</summary>
    public string[] Shards(int number) => [.. Directory.GetFiles(Path.Combine(Three, "shards", "scatters"),
        $"*.{number}-of-3.shard.json").Order(StringComparer.Ordinal)];

    public string NewFolder(string name) => Directory.CreateDirectory(folder[name]).FullName;

    internal IReadOnlyList<ProgramRun> Runs { get; private set; } = [];

    internal ProgramRun Merge { get; private set; } = null!;

    internal ProgramRun MergeOfOne { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        folder.CopyOf("scatters.ipynb");
        Runs =
        [
            await ProgramRun.RunAsync("run", Notebook, "--out", Whole),
            await ProgramRun.RunAsync("run", Notebook, "--out", One, "--shard", "1/1"),
            .. await Task.WhenAll(Enumerable.Range(1, 3).Select(n => ProgramRun.RunAsync("run", Notebook, "--out", Three, "--shard",
                $"{n}/3"))),
        ];
        MergeOfOne = await ProgramRun.RunAsync("merge", One);
        Merge = await ProgramRun.RunAsync("merge", Three);
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => folder.Dispose();
}
