using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Tests.Engine;

/// <summary>One session in this process, as a fixture: the compiler takes seconds to warm.</summary>
public sealed class SharedEngine : IAsyncLifetime
{
    internal CSharpEngine Engine { get; private set; } = null!;

    public async Task InitializeAsync() => Engine = await CSharpEngine.StartAsync(1_000_000, _ => Task.FromResult<string?>(null));

    public async Task DisposeAsync() => await Engine.DisposeAsync();
}

public sealed class CSharpEngineTests(SharedEngine shared) : IClassFixture<SharedEngine>
{
    private async Task<(CellOutcome Outcome, List<CellOutput> Outputs)> RunAsync(string code)
    {
        var outputs = new List<CellOutput>();
        var outcome = await shared.Engine.RunAsync(code, outputs.Add, CancellationToken.None);
        return (outcome, outputs);
    }

    [Fact]
    public async Task Everything_of_ours_is_there_in_the_first_cell()
    {
        var (outcome, outputs) = await RunAsync("63.Millimetres()");
        Assert.Equal(CellStatus.Succeeded, outcome.Status);
        Assert.Contains("63", (string?)Assert.IsType<ResultOutput>(Assert.Single(outputs)).Data["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Variables_live_on_also_after_a_failure()
    {
        await RunAsync("var kept = 41;");
        var (failed, _) = await RunAsync("kept = 42;\nthrow new InvalidOperationException(\"x\");");
        var (_, outputs) = await RunAsync("kept.ToString()");
        Assert.Equal(CellStatus.Failed, failed.Status);
        Assert.Equal("42", (string?)Assert.IsType<ResultOutput>(Assert.Single(outputs)).Data["text/plain"]);
    }

    [Fact]
    public async Task An_error_points_at_the_line_of_the_running_cell_even_when_thrown_in_an_earlier_one()
    {
        await RunAsync("void Thrower()\n{\n    throw new InvalidOperationException(\"deep\");\n}");
        var (outcome, _) = await RunAsync("var one = 1;\n\nThrower();");
        Assert.Equal("deep", outcome.Error!.Message);
        Assert.Equal(3, outcome.Error.Line);
        Assert.Equal("Thrower();", outcome.Error.SourceLine);
    }

    [Fact]
    public async Task An_error_inside_parallel_work_is_unwrapped()
    {
        var (outcome, _) = await RunAsync("System.Threading.Tasks.Parallel.For(0, 4, i => throw new InvalidOperationException(\"in "
            + "parallel\"));");
        Assert.Equal("InvalidOperationException", outcome.Error!.Kind);
        Assert.Equal("in parallel", outcome.Error.Message);
        Assert.Equal(1, outcome.Error.Line);
    }

    [Fact]
    public async Task All_compile_errors_are_told_once_the_first_one_leads()
    {
        var (outcome, _) = await RunAsync("int a = \"text\";\nint b = nowhere;");
        Assert.Equal("CompileError", outcome.Error!.Kind);
        Assert.Equal(1, outcome.Error.Line);
        Assert.Equal("line 2: There is no nowhere here. Run the cell that makes nowhere first, "
            + "or correct the name; Help() lists what is here.",
            Assert.Single(outcome.Error.Trace));
    }

    [Fact]
    public async Task Warnings_do_not_fail_a_cell()
    {
        var (outcome, outputs) = await RunAsync("[Obsolete] int Old() => 1;\nOld();");
        Assert.Equal(CellStatus.Succeeded, outcome.Status);
        Assert.Empty(outputs);
    }

    [Fact]
    public async Task A_cooperative_cell_stops_when_asked()
    {
        using var stop = new CancellationTokenSource();
        var outcome = await shared.Engine.RunAsync("Console.WriteLine(\"waits\"); await Task.Delay(-1);", _ => stop.Cancel(), stop.Token);
        Assert.Equal(CellStatus.Interrupted, outcome.Status);
        Assert.Equal(CellStatus.Succeeded, (await RunAsync("1 + 1")).Outcome.Status);
    }

    [Fact]
    public async Task A_long_computation_of_the_library_stops_when_its_cell_is_asked_to()
    {
        using var stop = new CancellationTokenSource();
        var outcome = await shared.Engine.RunAsync(
            "Console.WriteLine(\"begins\"); "
                + "System.Threading.Tasks.Parallel.For(0, 100_000_000, i => { NotebookKit.Numerics.WorkRun.Current.ThrowIfStopped(); "
                + "Thread.Sleep(1); });", _ => stop.Cancel(), stop.Token);
        // Interrupted, not abandoned: the loop ended by itself and the session is free again.
        Assert.Equal(CellStatus.Interrupted, outcome.Status);
        Assert.Equal(CellStatus.Succeeded, (await RunAsync("1 + 1")).Outcome.Status);
    }

    [Fact]
    public async Task Main_numbers_come_alone_and_in_lists()
    {
        var (_, alone) = await RunAsync("new Headline(\"Apogee\", \"148.6 m\")");
        var (_, list) = await RunAsync("new List<Headline> { new(\"a\", \"1\"), new(\"b\", \"2\") }");
        Assert.Single(Assert.IsType<JsonArray>(Assert.IsType<ResultOutput>(alone[0]).Data[MediaTypes.Headline]));
        Assert.Equal(2, Assert.IsType<JsonArray>(Assert.IsType<ResultOutput>(list[0]).Data[MediaTypes.Headline]).Count);
    }

    [Fact]
    public async Task Numbers_are_written_the_same_whatever_the_machine_speaks()
    {
        var (_, outputs) = await RunAsync("Console.Write(1234.5.ToString(\"N1\"));");
        Assert.Equal("1,234.5", Assert.IsType<StreamOutput>(Assert.Single(outputs)).Text);
    }
}
