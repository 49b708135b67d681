using NotebookKit.Numerics.Ode;

namespace NotebookKit.Tests.Numerics.Ode;

public class EventTests
{
    private static readonly OdeSettings Tight = new() { RelativeTolerance = 1e-10 };

    private static readonly Action<double, double[], double[]> Swing = (_, y, f) => (f[0], f[1]) = (y[1], -y[0]);

    [Fact]
    public void A_terminal_event_ends_the_integration_where_it_happens()
    {
        // Free fall from 10 m under 9.81: ground at sqrt(2*10/9.81).
        List<(int Index, double T, double[] Y)> found = [];
        var (result, y) = Run(2, (_, y, f) => (f[0], f[1]) = (y[1], -9.81), [10, 0], 0, 100, found,
            ((_, y) => y[0], new(OdeEventDirection.Falling, true)));
        Assert.Equal(OdeStatus.EndedByEvent, result.Status);
        Assert.Equal(0, result.TerminalEvent);
        Tolerance.Relative(Math.Sqrt(20 / 9.81), result.Time, 1e-12);
        Tolerance.Absolute(0, y[0], 1e-12);
        Tolerance.Relative(-Math.Sqrt(2 * 9.81 * 10), y[1], 1e-12);
        Assert.Contains("Event 0", result.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(OdeEventDirection.Rising, 1.5, 3.5, 5.5)]
    [InlineData(OdeEventDirection.Falling, 0.5, 2.5, 4.5)]
    public void Only_crossings_in_the_wanted_direction_count(OdeEventDirection direction, params double[] halfTurns)
    {
        // cos t falls through zero at pi/2, rises at 3 pi/2.
        List<(int Index, double T, double[] Y)> found = [];
        Run(2, Swing, [1, 0], 0, 6 * Math.PI, found, ((_, y) => y[0], new(direction, false)));
        Assert.Equal(3, found.Count);
        for (var i = 0; i < 3; i++) Tolerance.Absolute(halfTurns[i] * Math.PI, found[i].T, 1e-8);
    }

    [Fact]
    public void Events_of_one_step_are_reported_in_order_and_none_after_a_terminal_one()
    {
        // One long step crosses all three lines.
        List<(int Index, double T, double[] Y)> found = [];
        var (result, _) = Run(1, (_, _, f) => f[0] = 1, [0], 0, 10, found,
            ((_, y) => y[0] - 6, new(OdeEventDirection.Any, false)),
            ((_, y) => y[0] - 5, new(OdeEventDirection.Any, true)),
            ((_, y) => y[0] - 4, new(OdeEventDirection.Any, false)));
        Assert.Equal([2, 1], found.Select(e => e.Index));
        Tolerance.Absolute(5, result.Time, 1e-12);
    }

    [Fact]
    public void Works_backward_too()
    {
        List<(int Index, double T, double[] Y)> found = [];
        Run(2, Swing, [1, 0], 0, -6, found, ((_, y) => y[0], new(OdeEventDirection.Falling, true)));
        Tolerance.Absolute(-Math.PI / 2, Assert.Single(found).T, 1e-9);
    }

    [Fact]
    public void A_function_that_starts_at_zero_is_no_crossing()
    {
        List<(int Index, double T, double[] Y)> found = [];
        Run(2, Swing, [0, 1], 0, 1, found, ((_, y) => y[0], new(OdeEventDirection.Any, true)));
        Assert.Empty(found);
    }

    [Fact]
    public void The_observer_sees_the_step_cut_at_the_event()
    {
        var builder = new TrajectoryBuilder(2);
        var system = new Equations(2, Swing);
        var events = new Watched([], ((_, y) => y[0], new(OdeEventDirection.Falling, true)));
        var observer = new TrajectoryRecorder(builder);
        OdeDriver.Integrate(ref system, ref events, ref observer, 0, 10, [1, 0], Tight, [1e-12, 1e-12]);
        Tolerance.Absolute(Math.PI / 2, builder.Time(builder.Count - 1), 1e-9);
    }

    [Fact]
    public void The_derivative_handed_to_an_event_locates_a_maximum()
    {
        var system = new Equations(1, (t, _, f) => f[0] = Math.Cos(t));
        var events = default(Summit);
        var observer = new NoObserver();
        OdeDriver.Integrate(ref system, ref events, ref observer, 0, 3, [0.0], Tight, [1e-12]);
        Tolerance.Absolute(Math.PI / 2, events.At, 1e-5);
    }

    private static (OdeResult Result, double[] State) Run(
        int dimension, Action<double, double[], double[]> rightHandSide, double[] y, double from, double to,
        List<(int Index, double T, double[] Y)> found, params (Func<double, double[], double> Function, OdeEventRule Rule)[] watched)
    {
        var system = new Equations(dimension, rightHandSide);
        var events = new Watched(found, watched);
        var observer = new NoObserver();
        return (OdeDriver.Integrate(ref system, ref events, ref observer, from, to, y, Tight, [.. Enumerable.Repeat(1e-12, dimension)]), y);
    }

    private struct Summit : IOdeEvents
    {
        public double At { get; private set; }

        public readonly int Count => 1;

        public readonly OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, false);

        public readonly double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => dydt[0];

        public void Located(int index, double t, ReadOnlySpan<double> y) => At = t;
    }
}
