using NotebookKit.Numerics.Ode;

namespace NotebookKit.Tests.Numerics.Ode;

public class OdeDriverTests
{
    private static readonly OdeSettings Tight = new() { RelativeTolerance = 1e-10 };

    [Fact]
    public void Observed_order_of_the_solution_is_five()
    {
        var errors = FixedSteps(inside: false);
        var order = Math.Log2(errors.Coarse / errors.Fine);
        Assert.InRange(order, 4.8, 5.3);
    }

    [Fact]
    public void Observed_order_of_the_dense_output_is_four_or_better()
    {
        // The interpolant is of order 4: its error inside one step falls with the fifth power of that step.
        var errors = FixedSteps(inside: true);
        var order = Math.Log2(errors.Coarse / errors.Fine);
        Assert.InRange(order, 3.8, 5.5);
    }

    [Fact]
    public void Derivative_of_the_dense_output_agrees_with_the_right_hand_side()
    {
        var system = new Equations(1, (t, y, f) => f[0] = y[0] * Math.Cos(t));
        var worst = new Worst { Points = [0.25, 0.5, 0.75] };
        var observer = new SlopeProbe(worst);
        var events = new NoEvents();
        OdeDriver.Integrate(ref system, ref events, ref observer, 0, 5, [1.0], Tight, [1e-12]);
        Assert.InRange(worst.Error, 0, 1e-6);
    }

    [Fact]
    public void A_shorter_tolerance_gives_a_smaller_error()
    {
        double[] errors = [.. new[] { 1e-4, 1e-6, 1e-8, 1e-10 }.Select(tolerance =>
        {
            var system = default(TwoBodies);
            double[] y = [0.7, 0, 0, Math.Sqrt(1.3 / 0.7)];
            OdeDriver.Integrate(ref system, 0, 2 * Math.PI, y, new() { RelativeTolerance = tolerance },
                [.. Enumerable.Repeat(tolerance, 4)]);
            return Math.Abs(y[0] - 0.7) + Math.Abs(y[1]);
        })];
        for (var i = 1; i < errors.Length; i++) Assert.True(errors[i] < errors[i - 1] / 10, string.Join(", ", errors));
    }

    [Fact]
    public void A_whole_orbit_keeps_energy_and_angular_momentum()
    {
        var system = default(TwoBodies);
        double[] y = [0.4, 0, 0, 2];
        OdeDriver.Integrate(ref system, 0, 20, y, Tight, [1e-12, 1e-12, 1e-12, 1e-12]);
        Tolerance.Absolute(0.5 * 4 - 1 / 0.4, 0.5 * (y[2] * y[2] + y[3] * y[3]) - 1 / Math.Sqrt(y[0] * y[0] + y[1] * y[1]), 1e-8);
        Tolerance.Absolute(0.8, y[0] * y[3] - y[1] * y[2], 1e-8);
    }

    [Fact]
    public void Integrates_backward_to_where_it_came_from()
    {
        var system = new Equations(2, (_, y, f) => (f[0], f[1]) = (y[0] - y[0] * y[1], -y[1] + y[0] * y[1]));
        double[] y = [1.5, 0.8];
        var forward = OdeDriver.Integrate(ref system, 0, 3, y, Tight, [1e-12, 1e-12]);
        var back = OdeDriver.Integrate(ref system, 3, 0, y, Tight, [1e-12, 1e-12]);
        Assert.Equal((OdeStatus.Completed, OdeStatus.Completed), (forward.Status, back.Status));
        Tolerance.Absolute(1.5, y[0], 1e-8);
        Tolerance.Absolute(0.8, y[1], 1e-8);
    }

    [Fact]
    public void Predator_and_prey_keep_their_invariant()
    {
        // Lotka-Volterra: x - ln x + y - ln y is constant (V. Volterra 1926; Hairer, Nørsett, Wanner I, I.1).
        var system = new Equations(2, (_, y, f) => (f[0], f[1]) = (y[0] - y[0] * y[1], -y[1] + y[0] * y[1]));
        double[] y = [2, 0.5];
        static double Invariant(double[] y) => y[0] - Math.Log(y[0]) + y[1] - Math.Log(y[1]);
        var before = Invariant(y);
        OdeDriver.Integrate(ref system, 0, 50, y, Tight, [1e-12, 1e-12]);
        Tolerance.Absolute(before, Invariant(y), 1e-7);
    }

    [Fact]
    public void An_interval_of_zero_length_changes_nothing()
    {
        var system = default(TwoBodies);
        double[] y = [1, 0, 0, 1];
        var result = OdeDriver.Integrate(ref system, 2, 2, y, Tight, [1e-9, 1e-9, 1e-9, 1e-9]);
        Assert.Equal(OdeStatus.Completed, result.Status);
        Assert.Equal(0, result.AcceptedSteps);
        Assert.Equal([1, 0, 0, 1], y);
    }

    [Fact]
    public void Ends_exactly_at_the_end()
    {
        var system = default(TwoBodies);
        double[] y = [1, 0, 0, 1];
        var result = OdeDriver.Integrate(ref system, 0, 0.1 + 0.2, y, Tight, [1e-9, 1e-9, 1e-9, 1e-9]);
        Assert.Equal(0.1 + 0.2, result.Time);
    }

    [Fact]
    public void No_step_is_longer_than_allowed()
    {
        var longest = new Worst();
        var system = new Equations(1, (_, _, f) => f[0] = 0);
        var events = new NoEvents();
        var observer = new StepLength(longest);
        OdeDriver.Integrate(ref system, ref events, ref observer, 0, 1, [1.0], new() { MaximumStep = 0.05 }, [1e-9]);
        Assert.InRange(longest.Error, 0.01, 0.05 + 1e-15);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_state_that_is_not_a_number_is_a_status(double bad)
    {
        var system = default(TwoBodies);
        var result = OdeDriver.Integrate(ref system, 0, 1, [1, bad, 0, 1], Tight, [1e-9, 1e-9, 1e-9, 1e-9]);
        Assert.Equal(OdeStatus.NonFinite, result.Status);
        Assert.Contains("finite", result.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_solution_that_breaks_off_is_a_status_and_leaves_the_last_good_state()
    {
        // y' = y^2 from 1 blows up at t = 1.
        var system = new Equations(1, (_, y, f) => f[0] = y[0] * y[0]);
        double[] y = [1];
        var result = OdeDriver.Integrate(ref system, 0, 2, y, Tight, [1e-9]);
        Assert.False(result.Succeeded);
        Assert.InRange(result.Time, 0.9, 1);
        Assert.True(double.IsFinite(y[0]));
    }

    [Fact]
    public void A_right_hand_side_that_stops_being_a_number_is_a_status()
    {
        var system = new Equations(1, (t, _, f) => f[0] = t < 0.5 ? 1 : double.NaN);
        double[] y = [0];
        var result = OdeDriver.Integrate(ref system, 0, 1, y, Tight, [1e-9]);
        Assert.Equal(OdeStatus.NonFinite, result.Status);
        Assert.InRange(y[0], 0, 0.5);
    }

    [Fact]
    public void Too_many_steps_is_a_status()
    {
        var system = default(TwoBodies);
        var result = OdeDriver.Integrate(ref system, 0, 1000, [1, 0, 0, 1], new() { MaximumSteps = 20 }, [1e-9, 1e-9, 1e-9, 1e-9]);
        Assert.Equal(OdeStatus.TooManySteps, result.Status);
        Assert.Equal(20, result.AcceptedSteps + result.RejectedSteps);
        Assert.InRange(result.Time, 0, 999);
    }

    [Fact]
    public void Counts_every_right_hand_side()
    {
        var count = 0;
        var system = new Equations(1, (_, y, f) =>
        {
            count++;
            f[0] = -y[0];
        });
        var result = OdeDriver.Integrate(ref system, 0, 5, [1.0], Tight, [1e-9]);
        Assert.Equal(count, result.Evaluations);
        Assert.Equal(2 + 6 * (result.AcceptedSteps + result.RejectedSteps), result.Evaluations);
    }

    [Fact]
    public void Allocates_nothing_while_it_runs()
    {
        var system = default(TwoBodies);
        double[] y = [1, 0, 0, 1], tolerance = [1e-9, 1e-9, 1e-9, 1e-9];
        var seen = 0;
        for (var pass = 0; pass < 50; pass++) Once();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var steps = Once();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(steps > 50);
        Assert.InRange(seen, 5, 7);

        int Once()
        {
            var events = default(AxisCrossings);
            var observer = new NoObserver();
            var result = OdeDriver.Integrate(ref system, ref events, ref observer, 0, 20, y, OdeSettings.Default, tolerance);
            seen = events.Seen;
            return result.AcceptedSteps;
        }
    }

    [Fact]
    public void A_large_system_runs_off_the_stack()
    {
        var system = new Equations(100, (_, y, f) =>
        {
            for (var i = 0; i < 100; i++) f[i] = -(i + 1) * 0.01 * y[i];
        });
        double[] y = [.. Enumerable.Repeat(1.0, 100)];
        OdeDriver.Integrate(ref system, 0, 1, y, Tight, [.. Enumerable.Repeat(1e-12, 100)]);
        Tolerance.Relative(Math.Exp(-0.01), y[0], 1e-9);
        Tolerance.Relative(Math.Exp(-1), y[99], 1e-9);
    }

    [Fact]
    public void Refuses_what_does_not_fit()
    {
        var system = default(TwoBodies);
        Assert.Contains("4", Assert.Throws<ArgumentException>(() => OdeDriver.Integrate(ref system, 0, 1, [1, 0], Tight,
            [1, 1, 1, 1])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => OdeDriver.Integrate(ref system, 0, 1, [1, 0, 0, 1], Tight, [1e-9]));
        Assert.Throws<ArgumentException>(() => OdeDriver.Integrate(ref system, 0, double.NaN, [1, 0, 0, 1], Tight, [1, 1, 1, 1]));
        Assert.Throws<ArgumentException>(() => OdeDriver.Integrate(ref system, 0, 1, [1, 0, 0, 1], Tight, [1, 0, 1, 1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdeSettings { RelativeTolerance = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdeSettings { RelativeTolerance = double.NaN });
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdeSettings { MaximumStep = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdeSettings { MinimumStep = double.PositiveInfinity });
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdeSettings { InitialStep = double.NaN });
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdeSettings { MaximumSteps = 0 });
    }

    [Fact]
    public void A_trajectory_records_ends_and_inside_points_in_order()
    {
        var builder = new TrajectoryBuilder(1, 1);
        double[] y = [1];
        builder.Add(0, y);
        var system = new Equations(1, (_, y, f) => f[0] = -y[0]);
        var events = new NoEvents();
        var recorder = new TrajectoryRecorder(builder, 3);
        var result = OdeDriver.Integrate(ref system, ref events, ref recorder, 0, 4, y, Tight, [1e-10]);
        Assert.Equal(1 + 3 * result.AcceptedSteps, builder.Count);
        for (var i = 0; i < builder.Count; i++)
        {
            Tolerance.Absolute(Math.Exp(-builder.Time(i)), builder.State(i)[0], 1e-8);
            if (i > 0) Assert.True(builder.Time(i) > builder.Time(i - 1));
        }

        Assert.Equal(4, builder.Time(builder.Count - 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => builder.Time(builder.Count));
    }

    private static (double Coarse, double Fine) FixedSteps(bool inside)
    {
        return (Error(0.1), Error(0.05));

        double Error(double h)
        {
            // y' = y cos t, y = exp(sin t): Hull et al. 1972, problem A3. A loose tolerance and a fixed longest step make steps of one
            // length.
            var system = new Equations(1, (t, y, f) => f[0] = y[0] * Math.Cos(t));
            var worst = new Worst { Points = inside ? [0.3, 0.6, 0.9] : [1] };
            var events = new NoEvents();
            var observer = new StateProbe(worst);
            OdeDriver.Integrate(
                ref system, ref events, ref observer, 0, 2, [1.0], new() { InitialStep = h, MaximumStep = h, RelativeTolerance = 0.1 },
                    [1.0]);
            return worst.Error;
        }
    }

    private sealed class Worst
    {
        public double Error { get; set; }

        public double[] Points { get; init; } = [];
    }

    private readonly struct StateProbe(Worst worst) : IOdeObserver
    {
        public bool IsActive => true;

        public void Accepted(in DenseStep step)
        {
            Span<double> y = stackalloc double[1];
            foreach (var point in worst.Points)
            {
                var t = step.Start + point * (step.End - step.Start);
                step.State(t, y);
                worst.Error = Math.Max(worst.Error, Math.Abs(y[0] - Math.Exp(Math.Sin(t))));
            }
        }
    }

    private readonly struct SlopeProbe(Worst worst) : IOdeObserver
    {
        public bool IsActive => true;

        public void Accepted(in DenseStep step)
        {
            Span<double> slope = stackalloc double[1];
            foreach (var point in worst.Points)
            {
                var t = step.Start + point * (step.End - step.Start);
                step.Derivative(t, slope);
                worst.Error = Math.Max(worst.Error, Math.Abs(slope[0] - Math.Exp(Math.Sin(t)) * Math.Cos(t)));
            }
        }
    }

    private readonly struct StepLength(Worst worst) : IOdeObserver
    {
        public bool IsActive => true;

        public void Accepted(in DenseStep step) => worst.Error = Math.Max(worst.Error, step.End - step.Start);
    }
}
