using System.Text.RegularExpressions;
using NotebookKit.Numerics;

namespace NotebookKit.Tests.House;

/// <summary>A notebook's stop button ends a computation only where the computation looks.</summary>
public sealed partial class StopTests
{
    public static TheoryData<string> Verbs => [.. LongVerbs.All.Keys];

    public static TheoryData<string> GrowingVerbs => [.. LongVerbs.Growing.Keys];

    [Theory]
    [MemberData(nameof(Verbs))]
    public void A_run_that_is_stopped_before_it_begins_gives_no_answer_and_the_next_one_does(string verb)
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        using (WorkRun.Begin(stopped.Token)) Assert.ThrowsAny<OperationCanceledException>(LongVerbs.All[verb]);
        LongVerbs.All[verb]();
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public void A_run_that_is_stopped_on_its_way_ends_there(string verb)
    {
        LongVerbs.All[verb]();
        var all = Looks(LongVerbs.All[verb]);
        Assert.True(all >= 10, $"it looks {all} times only");
        using var stop = new CancellationTokenSource();
        var (looks, after, isStopped) = (0, 0, false);
        using var run = WorkRun.Watch(() =>
        {
            if (Volatile.Read(ref isStopped)) Interlocked.Increment(ref after);
            if (Interlocked.Increment(ref looks) != all / 2) return;
            stop.Cancel();
            Volatile.Write(ref isStopped, true);
        }, stop.Token);
        Assert.ThrowsAny<OperationCanceledException>(LongVerbs.All[verb]);
        // The others of a parallel loop find out at their next look.
        Assert.True(looks < all && after <= 32, $"{looks} looks of {all}, {after} of them after it was stopped");
    }

    [Theory]
    [MemberData(nameof(GrowingVerbs))]
    public void The_more_there_is_to_do_the_more_often_it_looks(string verb)
    {
        var (small, large, more) = LongVerbs.Growing[verb];
        small();
        var (few, many) = (Looks(small), Looks(large));
        Assert.True(many - few >= more, $"{few} looks for the small one, {many} for the large one");
    }

    [Fact]
    public void Every_parallel_loop_takes_the_options_of_the_run()
    {
        var loops = new[] { "src/NotebookKit", "src/NotebookKit.Charts", "src/NotebookKit.Logs",
            "src/NotebookKit.Interactive" }.SelectMany(Repository.Sources)
            .SelectMany(f => ParallelLoop().Matches(File.ReadAllText(f)).Select(m => (File: Path.GetFileName(f), Line: m.Value))).ToList();
        Assert.True(loops.Count >= 10);
        Violations.None(loops.Where(l => !l.Line.Contains("un.Parallel(", StringComparison.Ordinal)).Select(l => $"{l.File}: {l.Line}"));
    }

    private static int Looks(Action verb)
    {
        var looks = 0;
        using var run = WorkRun.Watch(() => Interlocked.Increment(ref looks));
        verb();
        return looks;
    }

    [GeneratedRegex(@"(Parallel\.(For|ForEach|Invoke)\w*|\.AsParallel)\(.*")]
    private static partial Regex ParallelLoop();
}
