using NotebookKit.Numerics;

namespace NotebookKit.Tests.Numerics;

public class WorkRunTests
{
    private sealed class Listener : IProgress<WorkDone>
    {
        public List<int> Told { get; } = [];

        public void Report(WorkDone value) => Told.Add(value.Done);
    }

    [Fact]
    public async Task A_wish_to_stop_reaches_parallel_work_of_its_own_flow_and_no_other()
    {
        using var source = new CancellationTokenSource();
        var asked = Task.Run(() =>
        {
            using var run = WorkRun.Begin(source.Token);
            source.Cancel();
            Parallel.For(0, 4, _ => WorkRun.Current.ThrowIfStopped());
        });

        var stopped = await Assert.ThrowsAsync<AggregateException>(() => asked);
        Assert.All(stopped.Flatten().InnerExceptions, e => Assert.IsType<OperationCanceledException>(e));
        WorkRun.Current.ThrowIfStopped();
    }

    [Fact]
    public void A_parallel_loop_with_the_options_of_the_run_ends_in_one_stop_and_not_in_a_bundle_of_them()
    {
        using var source = new CancellationTokenSource();
        using var run = WorkRun.Begin(source.Token);
        Assert.ThrowsAny<OperationCanceledException>(() => Parallel.For(0, 1000, run.Parallel(), _ =>
        {
            source.Cancel();
            WorkRun.Current.ThrowIfStopped();
        }));
    }

    [Fact]
    public void After_an_inner_run_the_outer_one_goes_on()
    {
        using var source = new CancellationTokenSource();
        var (outer, inner) = (new Listener(), new Listener());
        using (WorkRun.Begin(default, outer))
        {
            using (WorkRun.Begin(source.Token, inner))
            {
                WorkRun.Current.Tell(new("steps", 1, 3));
                source.Cancel();
                Assert.Throws<OperationCanceledException>(WorkRun.Current.ThrowIfStopped);
            }

            WorkRun.Current.ThrowIfStopped();
            WorkRun.Current.Tell(new("steps", 2, 3));
            using (WorkRun.Begin(default)) WorkRun.Current.Tell(new("steps", 3, 3));
        }

        WorkRun.Current.Tell(new("steps", 4, 4));
        Assert.Equal([1], inner.Told);
        Assert.Equal([2, 3], outer.Told);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Either_of_two_runs_stops_what_is_computed_in_both(bool outerStops)
    {
        using var first = new CancellationTokenSource();
        using var second = new CancellationTokenSource();
        using var outer = WorkRun.Begin(first.Token);
        using var inner = WorkRun.Begin(second.Token);
        WorkRun.Current.ThrowIfStopped();
        (outerStops ? first : second).Cancel();
        Assert.Throws<OperationCanceledException>(WorkRun.Current.ThrowIfStopped);
    }
}
