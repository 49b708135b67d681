namespace NotebookKit.Runner.Tests.Running;

/// <summary>A design's notebook run on its own givens, and again with one on which a cell refuses.</summary>
public sealed class TrainerRuns : IAsyncLifetime, IDisposable
{
    private readonly TestFolder folder = new();

    internal ProgramRun First { get; private set; } = null!;

    internal ProgramRun Second { get; private set; } = null!;

    public string FirstPage { get; private set; } = "";

    public string Page => Text("pages", "goes-on.html");

    public string Index => Text("index.html");

    public string Executed => Text("notebooks", "goes-on.ipynb");

    public string Kept => Text("records", "goes-on", "trainer.json");

    public async Task InitializeAsync()
    {
        var notebook = TestFolder.Fixture(Path.Combine("requirements", "goes-on.ipynb"));
        First = await ProgramRun.RunAsync("run", notebook, "--out", folder["out"]);
        FirstPage = Page;
        Second = await ProgramRun.RunAsync("run", notebook, "--out", folder["out"], "--given", "fill pressure=25 bar gauge");
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => folder.Dispose();

    private string Text(params string[] parts) => File.ReadAllText(folder[["out", .. parts]]);
}

public sealed class FailedRequirementTests(TrainerRuns runs) : IClassFixture<TrainerRuns>
{
    [Fact]
    public void A_run_on_which_all_holds_lists_the_requirements_and_keeps_its_record()
    {
        Assert.Equal(0, runs.First.ExitCode);
        Assert.Contains("<th scope=\"row\">wall pressure</th><td>holds</td><td>8 bar gauge</td>", runs.FirstPage, StringComparison.Ordinal);
        Assert.DoesNotContain("beside the last record", runs.FirstPage, StringComparison.Ordinal);
        Assert.Contains("\"holds\": true", runs.Kept, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_that_needs_what_a_failed_cell_would_have_made_says_so_in_its_place()
    {
        Assert.Contains("Not computed: this cell needs wall, which cell 2 could not make.", runs.Executed, StringComparison.Ordinal);
        Assert.Contains("Not computed: this cell needs doubled, which cell 5 could not make because cell 2 failed.", runs.Page,
            StringComparison.Ordinal);
    }

    [Fact]
    public void All_else_is_computed()
    {
        Assert.Contains("made before", runs.Executed, StringComparison.Ordinal);
        Assert.Contains("Design record", runs.Page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_at_the_top_says_holds_no_longer_holds_and_cannot_tell()
    {
        var page = runs.Page;
        var table = page[page.IndexOf("<table class=\"requirements\"", StringComparison.Ordinal)..];
        Assert.True(page.IndexOf("<table class=\"requirements\"", StringComparison.Ordinal)
            < page.IndexOf("id=\"cell-1\"", StringComparison.Ordinal));
        Assert.Contains("beside the last record", table, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\">pad gauge</th><td>no longer holds</td><td>25 bar gauge</td><td>at most 15 bar gauge</td>"
            + "<td>held, 8 bar gauge</td>", table, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\">wall pressure</th><td>can't tell</td>", table.Replace("&#39;", "'", StringComparison.Ordinal),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_exit_code_is_one_and_the_index_counts_what_was_not_computed()
    {
        Assert.Equal(1, runs.Second.ExitCode);
        Assert.Contains("3 of 8 cells were not computed.", runs.Index, StringComparison.Ordinal);
        Assert.Contains("3 of 8 cells were not computed.", runs.Page, StringComparison.Ordinal);
        Assert.Contains("3 of 8 cells were not computed.", runs.Second.Output, StringComparison.Ordinal);
        Assert.Contains("No longer holds: pad gauge.", runs.Index, StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_given_is_on_index_and_page()
    {
        const string line = "fill pressure is 25 bar gauge, was 8 bar gauge (set for this run)";
        Assert.Contains(line, runs.Index, StringComparison.Ordinal);
        Assert.Contains(line, runs.Page, StringComparison.Ordinal);
        Assert.Contains(line, runs.Second.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_on_which_something_failed_shows_no_decision_at_its_top() =>
        Assert.DoesNotContain("class=\"verdict holds\"", runs.Page, StringComparison.Ordinal);

    [Fact]
    public void A_run_with_another_given_leaves_the_kept_record_as_it_is() =>
        Assert.Contains("8 bar gauge", runs.Kept, StringComparison.Ordinal);

    [Fact]
    public async Task After_a_compile_error_the_cells_that_do_not_need_it_run()
    {
        using var folder = new TestFolder();
        var run = await ProgramRun.RunAsync("run", TestFolder.Fixture(Path.Combine("requirements", "does-not-compile-midway.ipynb")),
            "--out", folder["out"]);
        Assert.Equal(1, run.ExitCode);
        var executed = File.ReadAllText(folder["out", "notebooks", "does-not-compile-midway.ipynb"]);
        Assert.Contains("Not computed: this cell needs b, which cell 2 could not make.", executed, StringComparison.Ordinal);
        Assert.Contains("\"42\"", executed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such.json", "there is no file")]
    [InlineData(null, "name the one notebook")]
    public async Task A_last_record_that_cannot_be_meant_is_refused(string? file, string sentence)
    {
        using var folder = new TestFolder();
        File.WriteAllText(folder["record.json"], runs.Kept);
        var run = await ProgramRun.RunAsync("run", folder.CopyOf("passes.ipynb"), folder.CopyOf("no-ids.ipynb"), "--out", folder["out"],
            "--last-record", folder[file ?? "record.json"]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(sentence, (run.Output + run.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }
}
