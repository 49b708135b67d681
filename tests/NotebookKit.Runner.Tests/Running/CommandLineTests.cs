using System.Diagnostics;

namespace NotebookKit.Runner.Tests.Running;

public sealed class CommandLineTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_run_without_failure_ends_with_zero()
    {
        var run = await ProgramRun.RunAsync("run", folder.CopyOf("passes.ipynb"), "--out", folder["out"]);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("1 of 1 notebooks ran to their end", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder["out", "index.html"]));
    }

    [Theory]
    [InlineData("Write it with its unit", "run", "x.ipynb", "--cell-limit", "60")]
    [InlineData("above zero", "run", "x.ipynb", "--cell-limit", "0s")]
    [InlineData("--jobs must be between 1 and 64", "run", "x.ipynb", "--jobs", "0")]
    [InlineData("Two notebooks are called a", "run", "a.ipynb", "b/a.ipynb", "--out", "somewhere")]
    [InlineData("brew", "brew")]
    public async Task A_request_that_makes_no_sense_is_refused_with_a_sentence(string sentence, params string[] arguments)
    {
        var run = await ProgramRun.RunAsync(arguments);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(sentence, (run.Output + run.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("500ms", 0.5)]
    [InlineData("90 s", 90)]
    [InlineData("2min", 120)]
    [InlineData("1.5h", 5400)]
    public void A_time_limit_is_read_as_people_write_it(string text, double seconds)
        => Assert.Equal(TimeSpan.FromSeconds(seconds), Commands.TimeLimitText.Read(text));

    [Fact]
    public async Task A_notebook_is_never_overwritten_by_its_own_result()
    {
        Directory.CreateDirectory(folder["notebooks"]);
        var notebook = folder["notebooks", "passes.ipynb"];
        File.Copy(TestFolder.Fixture("passes.ipynb"), notebook);
        var run = await ProgramRun.RunAsync("run", notebook, "--out", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(File.ReadAllText(TestFolder.Fixture("passes.ipynb")), File.ReadAllText(notebook));
    }

    [Fact]
    public async Task A_list_tells_titles()
    {
        var run = await ProgramRun.RunAsync("list", folder.CopyOf("passes.ipynb"));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("A short lesson", run.Output, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task An_interrupt_ends_the_workers_and_leaves_no_half_file()
    {
        Skip.If(OperatingSystem.IsWindows(), "Sends a POSIX signal.");
        // The cell says that it has begun, with the number of its process.
        const string Code = """System.IO.File.WriteAllText(\"id.new\", $\"{Environment.ProcessId}\"); """
            + """System.IO.File.Move(\"id.new\", \"id\"); while (true) Thread.Sleep(100);""";
        await File.WriteAllTextAsync(folder["hangs.ipynb"], $$"""
            {"cells":[{"cell_type":"code","id":"a","metadata":{},"source":"{{Code}}","outputs":[],"execution_count":null}],
            "metadata":{},"nbformat":4,"nbformat_minor":5}
            """);
        var begun = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        using var watch = new FileSystemWatcher(folder.Path, "id") { EnableRaisingEvents = true };
        watch.Renamed += (_, _) => begun.TrySetResult();
        using var program = ProgramRun.Start("run", folder["hangs.ipynb"], "--out", folder["out"], "--cell-limit", "5min");
        await begun.Task.WaitAsync(Patience.Limit);
        var worker = await File.ReadAllTextAsync(folder["id"]);
        using (var kill = Process.Start("kill", ["-INT", program.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)])) await
            kill.WaitForExitAsync();
        var run = await ProgramRun.EndAsync(program);

        Assert.Equal(130, run.ExitCode);
        Assert.False(Directory.Exists($"/proc/{worker}"));
        Assert.False(Directory.Exists(folder["out"]) && Directory.EnumerateFiles(folder["out"], "*", SearchOption.AllDirectories).Any());
    }
}
