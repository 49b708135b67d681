using NotebookKit.Numerics;

namespace NotebookKit.Tests.Numerics;

public class StopRequestTests
{
    [Fact]
    public async Task A_wish_to_stop_reaches_parallel_work_of_its_own_flow_and_no_other()
    {
        using var source = new CancellationTokenSource();
        var asked = Task.Run(() =>
        {
            StopRequest.Listen(source.Token);
            source.Cancel();
            Parallel.For(0, 4, _ => StopRequest.ThrowIfAsked());
        });

        var stopped = await Assert.ThrowsAsync<AggregateException>(() => asked);
        Assert.All(stopped.Flatten().InnerExceptions, e => Assert.IsType<OperationCanceledException>(e));
        StopRequest.ThrowIfAsked();
    }
}
