using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results;
using NotebookKit.Charts.Tests.Results;
using NotebookKit.Numerics;
using NotebookKit.Quantities;
using NotebookKit.Recovery;

namespace NotebookKit.Charts.Tests.House;

/// <summary>An explorer computes hundreds of settings beforehand; the stop button ends that only where the grid and its check
/// look.</summary>
public sealed class StopTests
{
    private static readonly Canopy Canopy = new(CanopyType.FlatCircular, 0.9.Metres());

    // Nothing in the model itself looks: what is counted are the settings of the grid, and those that are checked between them.
    private static readonly Dictionary<string, Action> Explorers = new(StringComparer.Ordinal)
    {
        ["a model of one's own, one input"] = () => Line(9),
        ["a model of one's own, two inputs"] = () => Explore.Over(
            "Plane", ExplorerInput.Between("a", 1.Metres(), 2.Metres()), ExplorerInput.Between("b", 1.Metres(), 2.Metres()),
                (a, b) => Straight(a.Meters + b.Meters)),
        ["a fill"] = () => Curlew.Fill.Fill.Explore(),
        ["a flight straight up"] = () => Curlew.Flight.Flight.Explore(),
        ["a whole flight"] = () => Curlew.Vehicle.Explore(Curlew.Windy),
        ["a canopy"] = () => Canopy.Explore(900.Grams(), 150.Metres()),
        ["stability"] = () => Curlew.Vehicle.ExploreStability(),
    };

    public static TheoryData<string> Names => [.. Explorers.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void An_explorer_that_is_stopped_before_it_begins_is_not_made(string name)
    {
        _ = Curlew.Vehicle;
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        using var run = WorkRun.Begin(stopped.Token);
        Assert.ThrowsAny<OperationCanceledException>(Explorers[name]);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_explorer_that_is_stopped_at_its_hundredth_look_ends_there(string name)
    {
        const int at = 100;
        _ = Curlew.Vehicle;
        using var stop = new CancellationTokenSource();
        var looks = 0;
        using var run = WorkRun.Watch(() => { if (Interlocked.Increment(ref looks) == at) stop.Cancel(); }, stop.Token);
        Assert.ThrowsAny<OperationCanceledException>(Explorers[name]);
        Assert.True(looks <= at + 32, $"{looks} looks");
    }

    [Fact]
    public void Every_setting_of_the_grid_and_every_check_between_them_looks()
    {
        var (few, many) = (Looks(() => Line(5)), Looks(() => Line(25)));
        Assert.Equal(20, many - few);
        Assert.Equal(5, few - Explorer.ErrorChecks);
    }

    private static Explorer Line(int points) => Explore.Over("Line", ExplorerInput.Between("a", 1.Metres(), 2.Metres(), points: points),
        a => Straight(a.Meters));

    private static Explored Straight(double slope) => Explored.Curve(new Series("x", "m", [0, 1]), new Series("y", "m", [0, slope]));

    private static int Looks(Func<Explorer> make)
    {
        var looks = 0;
        using var run = WorkRun.Watch(() => Interlocked.Increment(ref looks));
        make();
        return looks;
    }
}
