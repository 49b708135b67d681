using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Jupyter;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>A session that grows with every cell says so, and what to do.</summary>
[Trait("Length", "long")]
public class LongSessionTests
{
    [Fact]
    public async Task A_fresh_session_is_offered_after_so_many_cells_and_again_after_as_many_more()
    {
        await using var session = new KernelSession(Path.GetTempPath(), _ => { }, offerAfter: 3);
        List<int> offered = [];
        for (var cell = 1; cell <= 7; cell++)
        {
            var outputs = new List<CellOutput>();
            var outcome = await session.RunAsync($"var a{cell} = {cell};", cell, "", outputs.Add, null, CancellationToken.None);
            Assert.Equal(CellStatus.Succeeded, outcome.Status);
            if (outputs.Count == 0) continue;
            var said = Assert.IsType<StreamOutput>(Assert.Single(outputs));
            Assert.Equal("stderr", said.Name);
            Assert.Contains($"has run {cell} cells", said.Text, StringComparison.Ordinal);
            Assert.Contains("Restart the kernel", said.Text, StringComparison.Ordinal);
            offered.Add(cell);
        }

        Assert.Equal([3, 6], offered);
    }

    // What is offered is a memory that a restart gives back, so that a cell that was lost counts for nothing.
    [Fact]
    public async Task A_session_that_was_replaced_counts_from_nothing()
    {
        await using var session = new KernelSession(Path.GetTempPath(), _ => { }, offerAfter: 2);
        await RunAsync("var a = 1;");
        Assert.Equal(CellStatus.Crashed, (await RunAsync("Environment.Exit(3);")).Outcome.Status);
        Assert.Empty((await RunAsync("var b = 1;")).Outputs);
        Assert.Single((await RunAsync("var c = 1;")).Outputs);

        async Task<(CellOutcome Outcome, List<CellOutput> Outputs)> RunAsync(string code)
        {
            var outputs = new List<CellOutput>();
            return (await session.RunAsync(code, 1, "", outputs.Add, null, CancellationToken.None), outputs);
        }
    }
}
