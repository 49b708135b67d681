namespace NotebookKit.Runner.Tests.Givens;

/// <summary>Runs with another given by the real program.</summary>
[Trait("Length", "long")]
public sealed class GivenRunTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string Notebook(string name) => TestFolder.Fixture(Path.Combine("givens", name + ".ipynb"));

    [Theory]
    [InlineData("the nearest is \"fill pressure\"", "fil pressure=20 bar gauge")]
    [InlineData("the unit is missing", "fill pressure=20")]
    [InlineData("give it one value", "fill pressure=20 bar gauge", "Fill pressure=21 bar gauge")]
    [InlineData("write it as name=value", "fill pressure")]
    public async Task A_given_that_cannot_be_set_ends_the_run_before_any_cell(string sentence, params string[] givens)
    {
        var run = await ProgramRun.RunAsync(["run", Notebook("trainer"), "--out", folder["out"],
            .. givens.SelectMany(g => new[] { "--given", g })]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(sentence, string.Join(' ', (run.Output + run.Errors).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder["out"]));
    }

    [Fact]
    public async Task A_given_that_can_be_set_is_used_and_the_others_are_told()
    {
        var run = await ProgramRun.RunAsync("run", Notebook("trainer"), Notebook("stages"), "--out", folder["out"], "--given",
            "FILL pressure=20 bar gauge");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("These notebooks have no given \"FILL pressure\" and run on their own values: stages.", run.Output,
            StringComparison.Ordinal);
        Assert.Contains("20 bar gauge", File.ReadAllText(folder["out", "notebooks", "trainer.ipynb"]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_given_with_a_name_made_at_run_time_is_checked_when_the_notebook_ends()
    {
        var taken = await ProgramRun.RunAsync("run", Notebook("at-run-time"), "--out", folder["out"], "--given", "booster mass=1.5 kg");
        Assert.Equal(0, taken.ExitCode);
        var left = await ProgramRun.RunAsync("run", Notebook("at-run-time"), "--out", folder["out"], "--given", "boster mass=1.5 kg");
        Assert.Equal(1, left.ExitCode);
        Assert.Contains("GivenNotTaken: The given \"boster mass\" was to be \"1.5 kg\", but no cell that ran states such a given",
            left.Output, StringComparison.Ordinal);
    }
}
