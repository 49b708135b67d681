namespace NotebookKit.Tests.House;

/// <summary>A notebook's stop button ends a computation only where the computation looks.</summary>
public sealed class StopTests
{
    [Fact]
    public void Every_parallel_loop_of_the_library_can_be_stopped()
    {
        var loops = Repository.Sources("src/NotebookKit").Where(f => File.ReadAllText(f).Contains("Parallel.For", StringComparison.Ordinal)).ToList();
        Assert.True(loops.Count >= 5);
        Assert.Empty(loops.Where(f => !File.ReadAllText(f).Contains("StopRequest.ThrowIfAsked", StringComparison.Ordinal)).Select(f => Path.GetFileName(f)));
    }
}
