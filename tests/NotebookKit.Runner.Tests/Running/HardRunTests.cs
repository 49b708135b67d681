using System.Diagnostics;
using System.Globalization;

namespace NotebookKit.Runner.Tests.Running;

/// <summary>A bad day: whatever is wrong with one notebook or with the disk, the rest goes on and says what is missing.</summary>
[Trait("Length", "long")]
public sealed class HardRunTests : IDisposable
{
    private const string Code = """{"cell_type":"code","id":"a","metadata":{},"source":"1 + 1","outputs":[],"execution_count":null}""";

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>What is wrong with a notebook, its cells, its metadata, and what is said of it.</summary>
    public static TheoryData<string, string, string> Broken => new()
    {
        { """{"cell_type":"code","id":"a","id":"b","metadata":{},"source":"1"}""", "{}", "a name stands twice in one of its objects: id" },
        { Code, """{"a":1,"a":2}""", "a name stands twice in one of its objects: a" },
        { Code, "\"text\"", "metadata is not an object" },
        { """{"cell_type":"code","id":"a","metadata":"text","source":"1"}""", "{}", "Entry 1 in the list of cells can't be read: its metadata" },
        { """{"cell_type":"code","id":"a","metadata":{},"source":7}""", "{}", "its source is not text" },
        { """{"cell_type":"code","id":"a","metadata":{},"source":["1",7]}""", "{}", "its source is not text" },
        { """{"cell_type":"markdown","id":"a","metadata":{}}""", "{}", "its source is not text" },
        { """{"cell_type":"code","id":"a","metadata":{"tags":{"a":1}},"source":"1"}""", "{}", "its tags are not a list" },
        { """{"cell_type":"markdown","id":"a","metadata":{},"source":"x","attachments":[1]}""", "{}", "its attachments are not an object" },
        { """{"cell_type":"markdown","id":"a","metadata":{},"source":"\ud800"}""", "{}", "half a character" },
        { """{"cell_type":"markdown","id":"a","metadata":{"x\ud800":1},"source":"x"}""", "{}", "half a character" },
    };

    [Fact]
    public async Task Every_broken_notebook_is_named_in_one_sentence_and_the_others_run()
    {
        var sentences = new List<string>();
        foreach (var row in Broken)
        {
            Write($"broken-{sentences.Count}", (string)row[0], (string)row[1]);
            sentences.Add((string)row[2]);
        }

        Write("quotes", Text(new string('>', 20_000) + " x"), "{}");
        Write("picture", Text("![x](a%00b.png) ![y](http://[::1)"), "{}");
        Write("sound", Text("# Sound\\n\\nIt runs.") + "," + Code, "{}");
        var run = await RunAsync(folder["out"]);

        for (var i = 0; i < sentences.Count; i++) Assert.Contains(sentences[i], Said(run, $"broken-{i}"), StringComparison.Ordinal);
        Assert.Contains("The page can't be made (a text cell is nested too deeply", Said(run, "quotes"), StringComparison.Ordinal);
        Assert.Contains($"2 of {sentences.Count + 3} notebooks ran to their end", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder["out", "pages", "sound.html"]));
        Assert.Contains("picture not found", File.ReadAllText(folder["out", "pages", "picture.html"]), StringComparison.Ordinal);
        Assert.Contains("a name stands twice", File.ReadAllText(folder["out", "index.html"]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_paragraph_of_50_MB_ends_no_run()
    {
        Write("large", Text("# Large\\n\\n" + string.Concat(Enumerable.Repeat("water ", 8_500_000))), "{}");
        Write("sound", Code, "{}");
        var run = await RunAsync(folder["out"], 0);
        Assert.True(new FileInfo(folder["out", "pages", "large.html"]).Length > 50_000_000);
        Assert.True(File.Exists(folder["out", "index.html"]), run.Output);
    }

    // The folder of the pages is there as a file: nothing can be written below it, whoever asks.
    [Fact]
    public async Task What_cannot_be_written_is_said_and_the_rest_is_written()
    {
        Write("sound", Code, "{}");
        Directory.CreateDirectory(folder["out"]);
        await File.WriteAllTextAsync(folder["out", "pages"], "in the way");
        var run = await RunAsync(folder["out"]);
        Assert.Contains("can't be written", Said(run, "sound"), StringComparison.Ordinal);
        Assert.Contains("name another folder with --out", Said(run, "sound"), StringComparison.Ordinal);
        Assert.Contains("(0 pages)", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder["out", "notebooks", "sound.ipynb"]));
        Assert.DoesNotContain("href=\"pages/sound.html\"", File.ReadAllText(folder["out", "index.html"]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_no_index_can_be_written_none_is_said_to_be_made()
    {
        Write("sound", Code, "{}");
        Directory.CreateDirectory(folder["out", "index.html"]);
        var run = await RunAsync(folder["out"]);
        Assert.Contains("The list of all pages can't be written", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("open it in a browser", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder["out", "pages", "sound.html"]));
    }

    [SkippableTheory]
    [InlineData("size=16k", "No space left")]
    [InlineData("size=64k", "No space left")]
    [InlineData("size=1m", "No space left")]
    [InlineData("ro", "Read-only")]
    public async Task A_disk_that_takes_no_more_ends_no_run_and_leaves_no_half_file(string mount, string why)
    {
        Skip.If(!OperatingSystem.IsLinux() || Environment.UserName != "root", "Only root may mount a small disk.");
        Directory.CreateDirectory(folder["disk"]);
        Skip.If(await CallAsync("mount", "-t", "tmpfs", "-o", mount, "none", folder["disk"]) != 0, "No small disk can be mounted here.");
        try
        {
            Write("sound", Code, "{}");
            Write("twice", Code.Replace("\"id\":\"a\"", "\"id\":\"a\",\"id\":\"b\"", StringComparison.Ordinal), "{}");
            var run = await RunAsync(folder["disk", "out"]);
            Assert.Contains(why, run.Output, StringComparison.Ordinal);
            Assert.Contains("a name stands twice", run.Output, StringComparison.Ordinal);
            var files = Directory.EnumerateFiles(folder["disk"], "*", SearchOption.AllDirectories).ToList();
            Assert.DoesNotContain(files, f => f.EndsWith(".part", StringComparison.Ordinal));
            foreach (var page in files.Where(f => f.EndsWith(".html", StringComparison.Ordinal)))
                Assert.EndsWith("</html>\n", File.ReadAllText(page), StringComparison.Ordinal);
            Assert.Equal(files.Any(f => f.EndsWith("index.html", StringComparison.Ordinal)),
                run.Output.Contains("open it in a browser", StringComparison.Ordinal));
        }
        finally
        {
            await CallAsync("umount", folder["disk"]);
        }
    }

    [Fact]
    public async Task A_folder_that_vanishes_during_the_run_costs_its_notebook_alone()
    {
        Directory.CreateDirectory(folder["notebooks", "gone"]);
        Write(Path.Combine("gone", "vanishes"), """{"cell_type":"code","id":"a","metadata":{},"source":"""
            + "\"System.IO.Directory.Delete(System.Environment.CurrentDirectory, true);\"" + ""","outputs":[],"execution_count":null}""",
            "{}");
        Write("sound", Code, "{}");
        var run = await ProgramRun.RunAsync("run", folder["notebooks", "gone"], folder["notebooks"], "--out", folder["out"], "--jobs", "1");
        Fails(run);
        Assert.Contains(run.Output.Split('\n'), l => l.Contains("sound", StringComparison.Ordinal)
            && l.Contains(" passed ", StringComparison.Ordinal));
        Assert.True(File.Exists(folder["out", "index.html"]), run.Output);
    }

    [Fact]
    public async Task A_notebook_that_another_program_has_locked_is_named_and_the_others_run()
    {
        Write("locked", Code, "{}");
        Write("sound", Code, "{}");
        using var held = new FileStream(folder["notebooks", "locked.ipynb"], FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        var run = await RunAsync(folder["out"]);
        Assert.Contains("can't be read", Said(run, "locked"), StringComparison.Ordinal);
        Assert.True(File.Exists(folder["out", "pages", "sound.html"]));
    }

    [Fact]
    public async Task Half_files_of_a_killed_run_are_cleared_and_those_of_a_running_one_stay()
    {
        Write("sound", Code, "{}");
        Directory.CreateDirectory(folder["out", "pages"]);
        string Part(int process) => folder["out", "pages", string.Create(CultureInfo.InvariantCulture,
            $"sound.html.{Environment.MachineName}.{process}.part")];
        var other = folder["out", "pages", "sound.html.another-machine.1.part"];
        foreach (var file in new[] { Part(999_999_999), Part(Environment.ProcessId), other, folder["out", "mine.part"] })
            await File.WriteAllTextAsync(file, "half");
        var run = await RunAsync(folder["out"], 0);
        Assert.False(File.Exists(Part(999_999_999)), run.Output);
        Assert.True(File.Exists(Part(Environment.ProcessId)), "what a running process writes was deleted");
        Assert.True(File.Exists(other), "what another machine writes was deleted");
        Assert.True(File.Exists(folder["out", "mine.part"]), "a file of the user's own was deleted");
    }

    private static string Text(string source) =>
        $$"""{"cell_type":"markdown","id":"t","metadata":{},"source":"{{source}}"}""";

    private void Write(string name, string cells, string metadata)
    {
        var path = folder["notebooks", name + ".ipynb"];
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, $$"""{"cells":[{{cells}}],"metadata":{{metadata}},"nbformat":4,"nbformat_minor":5}""");
    }

    private async Task<ProgramRun> RunAsync(string output, int code = 1)
    {
        var run = await ProgramRun.RunAsync("run", folder["notebooks"], "--out", output, "--jobs", "2");
        if (code == 1) Fails(run);
        else Assert.True(run.ExitCode == code, run.Output + run.Errors);
        return run;
    }

    private static void Fails(ProgramRun run)
    {
        Assert.True(run.ExitCode == 1, run.Output + run.Errors);
        Assert.DoesNotContain("Unhandled exception", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Output + run.Errors, StringComparison.Ordinal);
    }

    /// <summary>The lines of the summary on one notebook's failure: one sentence.</summary>
    private static string Said(ProgramRun run, string name)
    {
        var lines = run.Output.Split('\n');
        var start = Array.FindIndex(lines, l => l.StartsWith(name + ": ", StringComparison.Ordinal));
        Assert.True(start >= 0, $"{name} isn't named:\n{run.Output}");
        return string.Join('\n', lines.Skip(start).TakeWhile(l => l.Length > 0));
    }

    private static async Task<int> CallAsync(string program, params string[] arguments)
    {
        using var process = Process.Start(program, arguments);
        await process.WaitForExitAsync();
        return process.ExitCode;
    }
}
