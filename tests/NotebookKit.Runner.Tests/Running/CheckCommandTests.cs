namespace NotebookKit.Runner.Tests.Running;

[Trait("Length", "long")]
public sealed class CheckCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact, Trait("Length", "short")]
    public async Task A_design_that_keeps_its_requirements_ends_with_0_and_leaves_its_record()
    {
        var record = folder["curlew.record.json"];
        await Ends(0, "Required: apogee below the ceiling", "notebooks/curlew.json", "--record", record);
        Assert.Contains("\"fill pressure within the rating\"", await File.ReadAllTextAsync(record), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "NO LONGER HOLDS", "notebooks/curlew.json", "--given", "ceiling=400 m")]
    [InlineData(1, "CAN'T TELL", "notebooks/curlew.json", "--given", "fill pressure=70 bar gauge")]
    [InlineData(2, "is \"fill pressure\" meant?", "notebooks/curlew.json", "--given", "fil presure=40 bar gauge")]
    [InlineData(2, "isn't a value; write it as name=value", "notebooks/curlew.json", "--given", "40 bar gauge")]
    [InlineData(2, "there is no design file", "notebooks/none.json")]
    [InlineData(2, "\"curlew.json\"", "notebooks/curlw.json")]
    [InlineData(2, "can't be written", "notebooks/curlew.json", "--record", "/proc/none/x.json")]
    public Task A_design_that_does_not_ends_with_1_and_a_mistake_with_2(int code, string sentence, params string[] arguments) =>
        Ends(code, sentence, arguments);

    [Theory]
    [InlineData("\"--gven\" is no option of check; is \"--given\" meant?", "check", "x.json", "--gven", "a=b")]
    [InlineData("There is no command \"chek\"; is \"check\" meant?", "chek", "x.json")]
    [InlineData("\"y.json\" is more than check takes", "check", "x.json", "y.json")]
    [InlineData("Option '--over' is required", "sweep", "x.json")]
    public async Task A_mistyped_command_line_is_refused_in_a_sentence_with_the_nearest(string sentence, params string[] arguments)
    {
        var run = await ProgramRun.RunAsync([.. arguments]);
        Assert.Contains(sentence, (run.Output + run.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public Task An_unknown_value_lists_those_that_there_are() =>
        Ends(2, "fill pressure = 58 bar gauge", "notebooks/curlew.json", "--given", "colour=blue");

    [Fact]
    public async Task Every_mistake_of_a_file_is_listed_with_its_place()
    {
        var path = folder["wrong.json"];
        await File.WriteAllTextAsync(path, (await File.ReadAllTextAsync(AtRoot("notebooks/curlew.json")))
            .Replace("\"1925 mm\"", "\"1925\"", StringComparison.Ordinal).Replace("\"35 m\"", "\"35\"", StringComparison.Ordinal));
        await Ends(2, "Station can't be \"1925\": the unit is missing", path);
        await Ends(2, "Elevation can't be \"35\": the unit is missing", path);
    }

    private static string AtRoot(string path)
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root!.FullName, "NotebookKit.sln"))) root = root.Parent;
        return Path.Combine(root.FullName, path);
    }

    private static async Task Ends(int code, string sentence, params string[] arguments)
    {
        var run = await ProgramRun.RunAsync(["check", AtRoot(arguments[0]), .. arguments.Skip(1)]);
        Assert.Contains(sentence, (run.Output + run.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(code, run.ExitCode);
    }
}
