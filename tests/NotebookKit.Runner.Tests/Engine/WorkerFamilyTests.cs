using System.Diagnostics;
using System.Globalization;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Tests.Engine;

/// <summary>What a cell starts ends with its worker, however far it has gone from it.</summary>
[Trait("Length", "long")]
public sealed class WorkerFamilyTests : IDisposable
{
    // A program of its parent's, one whose parent has gone, and one in a session of its own whose parent has gone; each says its number.
    private const string Starts = """
        var shell = System.Diagnostics.Process.Start(new System.Diagnostics.ProcessStartInfo("sh") { RedirectStandardOutput = true,
            ArgumentList = { "-c",
            "idle() { sleep 3600 >/dev/null & echo $!; }; idle; (idle); (setsid sleep 3600 >/dev/null & echo $!)" } })!;
        var ids = string.Join(" ", Enumerable.Range(0, 3).Select(_ => shell.StandardOutput.ReadLine()).Append($"{Environment.ProcessId}"));
        """;

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [SkippableFact]
    public async Task Programs_that_left_the_worker_end_with_its_session()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Needs processes with a readable environment.");
        var worker = await WorkerEngine.StartAsync(new WorkerOptions(folder.Path), CancellationToken.None);
        var ids = await RunAsync(worker, Starts + "\nids");
        Assert.Equal(4, ids.Count);
        Assert.All(ids, id => Assert.True(Runs(id)));
        await worker.DisposeAsync();
        foreach (var id in ids) await EndedAsync(id);
    }

    [SkippableFact]
    public async Task Programs_of_a_cell_that_ended_the_process_end_too()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Needs processes with a readable environment.");
        var worker = await WorkerEngine.StartAsync(new WorkerOptions(folder.Path), CancellationToken.None);
        var ids = await RunAsync(worker, Starts + "\nids");
        var outcome = await worker.RunAsync("Environment.Exit(3);", _ => { }, CancellationToken.None);
        Assert.Equal(CellStatus.Crashed, outcome.Status);
        await worker.DisposeAsync();
        foreach (var id in ids) await EndedAsync(id);
    }

    [SkippableFact]
    public async Task A_thread_of_a_cell_keeps_no_worker_whose_front_was_killed()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Needs processes with a readable environment.");
        var code = Starts + "\nnew Thread(() => Thread.Sleep(-1)).Start();\nSystem.IO.File.WriteAllText(\"ids.new\", ids);\n"
            + "System.IO.File.Move(\"ids.new\", \"ids\");\nThread.Sleep(-1);";
        var cell = new System.Text.Json.Nodes.JsonObject
        {
            ["cell_type"] = "code", ["id"] = "a", ["metadata"] = new System.Text.Json.Nodes.JsonObject(), ["source"] = code,
            ["outputs"] = new System.Text.Json.Nodes.JsonArray(), ["execution_count"] = null,
        };
        await File.WriteAllTextAsync(folder["stays.ipynb"],
            $$"""{"cells":[{{cell.ToJsonString()}}],"metadata":{},"nbformat":4,"nbformat_minor":5}""");
        var written = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        using var watch = new FileSystemWatcher(folder.Path, "ids") { EnableRaisingEvents = true };
        watch.Renamed += (_, _) => written.TrySetResult();
        using var front = ProgramRun.Start("run", folder["stays.ipynb"], "--out", folder["out"]);
        await written.Task.WaitAsync(Patience.Limit);
        front.Kill();
        foreach (var id in Ids(await File.ReadAllTextAsync(folder["ids"]))) await EndedAsync(id);
    }

    private static async Task<IReadOnlyList<int>> RunAsync(WorkerEngine worker, string code)
    {
        var text = "";
        var outcome = await worker.RunAsync(code, o => text = o is ResultOutput shown ? (string?)shown.Data["text/plain"] : text,
            CancellationToken.None);
        Assert.True(outcome.Status == CellStatus.Succeeded, outcome.Error?.Message);
        return Ids(text!);
    }

    private static List<int> Ids(string text) => [.. text.Split(' ').Select(id => int.Parse(id, CultureInfo.InvariantCulture))];

    private static bool Runs(int id)
    {
        try
        {
            // What has ended and waits for its parent counts as ended.
            return !File.ReadAllText($"/proc/{id}/stat").Contains(") Z ", StringComparison.Ordinal);
        }
        catch (IOException)
        {
            return false;
        }
    }

    private static async Task EndedAsync(int id)
    {
        try
        {
            using var process = Process.GetProcessById(id);
            using var limit = new CancellationTokenSource(Patience.Limit);
            while (Runs(id)) await Task.Delay(20, limit.Token);
        }
        catch (ArgumentException)
        {
            // It had ended.
        }
    }
}
