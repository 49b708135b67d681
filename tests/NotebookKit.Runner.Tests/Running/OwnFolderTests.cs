namespace NotebookKit.Runner.Tests.Running;

/// <summary>A vehicle of one's own: a folder made, checked, run and swept.</summary>
public sealed class OwnFolderTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_new_folder_holds_its_requirements_rests_on_no_test_of_another_and_runs_as_a_notebook()
    {
        var made = await ProgramRun.RunAsync(["new", "Our rocket", "--in", folder[""]]);
        Assert.Equal(0, made.ExitCode);
        var own = folder["our-rocket"];
        foreach (var part in new[] { "vessels", "tests", "logs" }) Assert.True(Directory.Exists(Path.Combine(own, part)), part);
        var design = await File.ReadAllTextAsync(Path.Combine(own, "design.json"));
        Assert.DoesNotContain("\"evidence\"", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"weighed\"", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"measured\"", design, StringComparison.Ordinal);
        var check = await ProgramRun.RunAsync(["check", own]);
        Assert.Contains("Check of Our rocket", check.Output, StringComparison.Ordinal);
        Assert.Contains("0 tests", check.Output, StringComparison.Ordinal);
        Assert.Equal(0, check.ExitCode);
        var run = await ProgramRun.RunAsync(["run", own, "--out", folder["out"]]);
        Assert.Contains("1 of 1 notebooks ran", run.Output, StringComparison.Ordinal);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public async Task Two_stages_begin_with_the_two_stage_vehicle()
    {
        Assert.Equal(0, (await ProgramRun.RunAsync(["new", "Two up", "--stages", "2", "--in", folder[""]])).ExitCode);
        var check = await ProgramRun.RunAsync(["check", folder["two-up"]]);
        Assert.Contains("sustainer: design burst", check.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("can't be computed", check.Output, StringComparison.Ordinal);
    }

    // A file of one's own names its own material and a weighed end: the name stays, what was measured doesn't.
    [Fact]
    public async Task A_design_with_materials_of_its_own_keeps_their_names_and_no_measurement()
    {
        var own = (await File.ReadAllTextAsync(Path.Combine(TestFolder.Repository, "notebooks", "curlew.json")))
            .Replace("\"name\": \"laminating epoxy\"", "\"name\": \"our epoxy\", \"like\": \"laminating epoxy\"", StringComparison.Ordinal)
            .Replace("\"resin\": \"laminating epoxy\"", "\"resin\": \"our epoxy\"", StringComparison.Ordinal)
            .Replace("\"other parts\": \"15 g\"", "\"other parts\": \"15 g\", \"weighed\": \"80 g\"", StringComparison.Ordinal);
        await File.WriteAllTextAsync(folder["own.json"], own);
        var made = await ProgramRun.RunAsync(["new", "Named", "--from", folder["own.json"], "--in", folder[""]]);
        Assert.True(made.ExitCode == 0, made.Output + made.Errors);
        var design = await File.ReadAllTextAsync(Path.Combine(folder["named"], "design.json"));
        Assert.Contains("our epoxy", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"measured\"", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"weighed\"", design, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a/b", "can't be a folder's name")]
    [InlineData("...", "can't be a folder's name")]
    [InlineData("Fine", "There is no design", "--from", "heron")]
    public async Task A_name_that_is_no_folder_and_a_design_that_is_not_there_are_refused(string name, string sentence,
        params string[] more)
    {
        var made = await ProgramRun.RunAsync(["new", name, "--in", folder[""], .. more]);
        Assert.Contains(sentence, (made.Output + made.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(2, made.ExitCode);
    }

    [Fact]
    public async Task What_is_there_already_is_left_alone()
    {
        await File.WriteAllTextAsync(folder["mine"], "kept");
        Assert.Equal(2, (await ProgramRun.RunAsync(["new", "Mine", "--in", folder[""]])).ExitCode);
        Assert.Equal("kept", await File.ReadAllTextAsync(folder["mine"]));
    }

    [Fact]
    public async Task A_sweep_says_which_designs_hold_and_writes_its_table()
    {
        await ProgramRun.RunAsync(["new", "Swept", "--in", folder[""]]);
        var sweep = await ProgramRun.RunAsync(["sweep", folder["swept"], "--over", "fill pressure=10..30 bar gauge/5",
            "--table", folder["swept.csv"]]);
        Assert.Contains("5 designs meet every requirement", sweep.Output, StringComparison.Ordinal);
        Assert.Equal(0, sweep.ExitCode);
        var lines = await File.ReadAllLinesAsync(folder["swept.csv"]);
        Assert.Equal(6, lines.Length);
        Assert.Contains("Apogee [m]", lines[0], StringComparison.Ordinal);
        var refused = await ProgramRun.RunAsync(["sweep", folder["swept"], "--over", "fill pressure=1..2 bar gauge/1000",
            "--over", "throat=11..12 mm/1000"]);
        Assert.Contains("it must have 1 to 10000", (refused.Output + refused.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }
}
