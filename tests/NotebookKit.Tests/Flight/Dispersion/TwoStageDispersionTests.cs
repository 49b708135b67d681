using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Flight.Dispersion;

public class TwoStageDispersionTests
{
    private static readonly TwoStageVehicle Pair = SampleVehicles.TwoStages;

    private static readonly LaunchSite Site =
        SampleVehicles.Breezy with { Rail = new(4.Metres()), Ceiling = 500.Metres(), Field = FlyingField.Circle(300.Metres()) };

    private static readonly TwoStageSpread Usual = new();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void One_thread_or_many_and_any_splitting_give_the_same_answer(bool sixDegrees)
    {
        var one = Pair.Disperse(Site, Usual, 18, 11, sixDegrees, threads: 1);
        DispersionTests.AssertSame(one, Pair.Disperse(Site, Usual, 18, 11, sixDegrees, threads: 7));
        var shards = Enumerable.Range(1, 5).Select(n => Pair.DisperseShard(Site, Usual, 18, 11, n, 5,
            sixDegrees)).Select(s => DispersionShard.FromJson(s.ToJson()));
        DispersionTests.AssertSame(one, DispersionResult.Merge([.. shards]));
    }

    [Theory]
    [InlineData("latch")]
    [InlineData("drag")]
    [InlineData("timer")]
    public void Where_nothing_varies_every_flight_is_the_nominal_one_to_the_bit(string parting)
    {
        var pair = Pair with { Separation = Parting(parting) };
        var result = pair.Disperse(Site, TwoStageSpread.None, 3, 1);
        // The nominal flight at the same error control, from the vehicle itself.
        var marks = FlightRun.FlyStack(pair.Stack(Site).Numbers(Site), null, pair.Numbers(Site), FlightAccuracy.Fast, null, out var end);
        var up = FlightRun.Continue(pair.Sustainer.Numbers(Site), null, FlightAccuracy.Fast, end, true, StageSeparation.Marks(marks));
        var down = FlightRun.Continue(pair.Booster.Numbers(Site), null, FlightAccuracy.Fast, end, false,
            StageSeparation.Marks(marks) with { JetEndTime = marks.JetEndTime });
        Assert.All(result.Apogee.Values, h => Assert.Equal(up.ApogeeM, h));
        Assert.All(result.East.Values, x => Assert.Equal(up.LandingAt.Y, x));
        Assert.All(result.Booster!.East.Values, x => Assert.Equal(down.LandingAt.Y, x));
        Assert.All(result.Outputs.Single(s => s.Name == "Time the stages separate").Values, t => Assert.Equal(end.Time, t));
        // And the flight that a reader sees, which is integrated more finely.
        var nominal = pair.Fly(Site);
        Tolerance.Relative(nominal.Apogee.Meters, result.Apogee[0], 1e-4);
        Tolerance.Relative(nominal.Booster.Figures.LandingEast.Meters, result.Booster.East[0], 1e-3);
        Assert.Empty(result.OnApogee);
        Assert.Equal(0, result.Booster.Landings!.Major.Meters, 9);
    }

    [Theory]
    [InlineData("latch")]
    [InlineData("drag")]
    [InlineData("timer")]
    public void In_every_flight_masses_add_up_and_nothing_jumps_as_the_stages_part(string parting)
    {
        var pair = Pair with { Separation = Parting(parting) };
        var spread = Usual with { Separation = 200.Milliseconds(),
            Both = new() { Pressure = 5.Percent(), DryMass = 10.Percent(), Water = 3.Percent() } };
        var dispersion = new TwoStageDispersion(pair, Site, spread, 20, 3, isSixDegrees: false);
        for (var flight = 0; flight < 20; flight++)
        {
            var n = dispersion.Numbers(flight);
            var rows = new FlightRows();
            var (upRows, downRows) = (new FlightRows(), new FlightRows());
            var marks = FlightRun.FlyStack(n.Stack, null, n.Separation, FlightAccuracy.Fast, rows, out var end);
            if (StageSeparation.Fault(marks, end) != SeparationFault.None) continue;
            FlightRun.Continue(n.Sustainer, null, FlightAccuracy.Fast, end, true, StageSeparation.Marks(marks), upRows);
            FlightRun.Continue(n.Booster, null, FlightAccuracy.Fast, end, false,
                StageSeparation.Marks(marks) with { JetEndTime = marks.JetEndTime }, downRows);
            var (last, up, down) = (rows[^1], upRows[0], downRows[0]);
            Assert.Equal(last.Position, up.Position);
            Assert.Equal(last.Velocity, down.Velocity);
            double before = n.Stack.DryKg + last.WaterKg + last.GasKg, above = n.Sustainer.DryKg + up.WaterKg + up.GasKg,
                below = n.Booster.DryKg + down.WaterKg + down.GasKg;
            Tolerance.Relative(before, above + below, 1e-12);
            Tolerance.Relative(before * last.Velocity.Length, (above * up.Velocity.Length) + (below * down.Velocity.Length), 1e-12);
            Assert.Equal(n.Separation.SustainerKg, above, 12);
        }
    }

    [Fact]
    public void A_later_parting_costs_height_and_is_what_the_height_hangs_on_where_nothing_else_varies()
    {
        var spread = TwoStageSpread.None with { Separation = 300.Milliseconds() };
        var result = Pair.Disperse(SampleVehicles.Calm with { Rail = new(4.Metres()) }, spread, 60, 4);
        var late = result.Inputs.Single(s => s.Name == "Time of separation");
        // A latch is never early.
        Assert.All(late.Values, t => Assert.True(t >= 0));
        var order = Enumerable.Range(0, 60).OrderBy(i => late[i]).ToArray();
        for (var i = 1; i < order.Length; i++) Assert.True(result.Apogee[order[i]] < result.Apogee[order[i - 1]]);
        var only = Assert.Single(result.OnApogee);
        Assert.Equal(-1, only.Correlation, 9);
    }

    [Fact]
    public void Each_stage_draws_its_own_and_the_day_is_the_same_for_both()
    {
        var result = Pair.Disperse(Site, Usual, 300, 2);
        Assert.Equal(0, result.Failed);
        Series Input(string name) => result.Inputs.Single(s => s.Name == name);
        var (low, high) = (Input("Booster's thrust"), Input("Sustainer's thrust"));
        Assert.InRange(RankCorrelation.Of(RankCorrelation.Ranks(low.Values), RankCorrelation.Ranks(high.Values)), -0.15, 0.15);
        Assert.Single(result.Inputs, s => s.Name == "Wind speed");
        // The day of a vehicle of one stage, with the same seed, is the same day.
        var single = Pair.Booster.Disperse(Site, new(), 300, 2).Inputs.Single(s => s.Name == "Wind speed");
        Assert.Equal(single.Values, Input("Wind speed").Values);
        Assert.Equal("Wind speed", result.OnLanding[0].Input);
        Assert.True(result.Booster!.Landings!.Major < result.Landings!.Major);
        Assert.Contains(result.Lines, l => l.Name == "Booster's 90 % ellipse");
        Assert.NotNull(result.AboveCeiling);
        Assert.NotNull(result.Booster.OffField);
    }

    [Fact]
    public void A_spread_of_one_stage_alone_leaves_the_other_as_it_is()
    {
        var spread = TwoStageSpread.None with { Sustainer = Spread.None with { Thrust = 5.Percent() } };
        var result = Pair.Disperse(Site, spread, 20, 2);
        Assert.Equal(["Sustainer's thrust"], result.OnApogee.Select(s => s.Input));
        Assert.Single(result.Booster!.East.Values.Distinct());
        Assert.Equal(20, result.Apogee.Values.Distinct().Count());
    }

    [Fact]
    public void Stages_that_part_too_early_for_some_flights_are_counted_and_said()
    {
        var nominal = Pair.Fly(Site);
        var end = nominal.Booster.Figures.EndOfJet;
        var pair = Pair with { Separation = Separation.ByTimer(end + 20.Milliseconds()) };
        var result = pair.Disperse(Site, TwoStageSpread.None with { Separation = 40.Milliseconds() }, 80, 6);
        Assert.InRange(result.Unparted, 10, 45);
        Assert.Equal(result.Unparted, result.Failed);
        Assert.Contains(result.Findings, f => f.Message.Contains("don't separate in order", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_drag_never_parts_them_there_is_no_scatter_and_that_is_said()
    {
        var pair = Pair with
        {
            Sustainer = Pair.Sustainer with { MeasuredDrag = DragCurve.Constant(2, Pair.Sustainer.Body.ReferenceArea) },
            MeasuredStackDrag = DragCurve.Constant(1.3, Pair.Booster.Body.ReferenceArea),
            Separation = Separation.ByDrag(90.Millimetres()),
        };
        var result = pair.Disperse(Site, Usual, 10, 1);
        Assert.Equal(ResultStatus.Failed, result.Status);
        Assert.Equal(10, result.Unparted);
        Assert.Null(result.Booster!.Landings);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void What_can_not_vary_so_is_refused_all_at_once()
    {
        var spread = new TwoStageSpread { Separation = 3.Seconds(), Booster = new() { Pressure = 50.Percent() },
            Sustainer = new() { Timer = 20.Seconds() } };
        var refused = Assert.Throws<InvalidDesignException>(() => Pair.Disperse(Site, spread, 1, 1, threads: 0));
        var errors = refused.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Message).ToArray();
        Assert.Equal(5, errors.Length);
        Assert.Contains(errors, m => m.StartsWith("booster: spread of the fill pressure", StringComparison.Ordinal));
        Assert.Contains(errors, m => m.Contains("spread of the time of separation is 3 s", StringComparison.Ordinal));
        Assert.Throws<InvalidDesignException>(() => Pair.Disperse(Site, Usual with { Separation = (-1).Seconds() }, 10, 1));
    }

    [Fact]
    public void Six_degrees_ask_for_parts_with_a_diameter_in_every_verb()
    {
        var thin = SampleVehicles.Trainer with { Parts = new([.. SampleVehicles.Trainer.Parts.Parts.Select(p => p
            with { Diameter = Length.Zero })]) };
        var pair = Pair with { Sustainer = thin };
        Action[] verbs =
        [
            () => thin.Disperse(Site, new(), 4, 1, sixDegrees: true), () => pair.FlySixDegrees(Site),
                () => pair.Disperse(Site, Usual, 4, 1, sixDegrees: true),
        ];
        Assert.All(verbs, verb => Assert.Contains("roll inertia", Assert.Throws<InvalidDesignException>(verb).Message,
            StringComparison.Ordinal));
        Assert.Equal(0, pair.Disperse(Site, Usual, 4, 1).Failed);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Pair.Disperse(Site, Usual, 100_000, 1, cancellation: stop.Token));
    }

    private static Separation Parting(string kind) => kind switch
    {
        "drag" => Separation.ByDrag(90.Millimetres()),
        "timer" => Separation.ByTimer(0.9.Seconds()),
        _ => Separation.ByPressureLatch(),
    };
}
