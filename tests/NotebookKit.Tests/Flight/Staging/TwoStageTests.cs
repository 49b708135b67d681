using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Published;

namespace NotebookKit.Tests.Flight.Staging;

public class TwoStageTests
{
    private static readonly TwoStageVehicle Pair = SampleVehicles.TwoStages;

    private static readonly LaunchSite Site = SampleVehicles.Calm with { Rail = new(4.Metres()) };

    [Fact]
    [PublishedCase("F73", "Momentum across a free separation: height and speed go on, masses add up")]
    public void Nothing_jumps_as_the_stages_part_and_their_masses_add_up()
    {
        var flight = Pair.Fly(Site);
        Assert.Equal(ResultStatus.Completed, flight.Status);
        var (ascent, up, down) = (flight.Ascent, flight.Sustainer, flight.Booster);
        Assert.Equal(ascent.Time[^1], up.Time[0], 12);
        Assert.Equal(ascent.Height[^1], up.Height[0], 9);
        Assert.Equal(ascent.Speed[^1], up.Speed[0], 9);
        Assert.Equal(ascent.Height[^1], down.Height[0], 9);
        Assert.Equal(ascent.Speed[^1], down.Speed[0], 9);
        Tolerance.Relative(ascent.Mass[^1], up.Mass[0] + down.Mass[0], 1e-12);
        // Momentum over separation, with the masses and speeds that each result shows.
        Tolerance.Relative(ascent.Mass[^1] * ascent.Speed[^1], (up.Mass[0] * up.Speed[0]) + (down.Mass[0] * down.Speed[0]), 1e-9);
        Assert.Equal(flight.SeparationTime.Seconds, up.Time[0], 9);
        Assert.Equal(flight.SeparationHeight.Meters, up.Height[0], 9);
    }

    [Fact]
    public void It_climbs_higher_than_either_stage_alone_and_the_rail_is_left_by_both()
    {
        var flight = Pair.Fly(Site);
        Assert.True(flight.Apogee > SampleVehicles.Trainer.Fly(Site).Apogee);
        Assert.True(flight.Apogee > flight.SeparationHeight);
        Assert.Equal(flight.Sustainer.Figures.RailExitSpeed, flight.Booster.Figures.RailExitSpeed);
        Assert.True(flight.Sustainer.Figures.RailExitTime < flight.SeparationTime);
        Assert.True(flight.Booster.Apogee >= flight.SeparationHeight);
        Assert.NotEmpty(flight.Lines);
        Assert.Equal(5, flight.Working.Steps.Count);
        Assert.Contains(flight.Model.Assumptions, a => a.Contains("separate by latch", StringComparison.Ordinal));
    }

    [Fact]
    public void Waiting_costs_height()
    {
        var cost = Pair.CostOfDelay(Site, 2.Seconds());
        for (var i = 1; i < cost.Apogee.Count; i++) Assert.True(cost.Apogee[i] < cost.Apogee[i - 1]);
        Tolerance.Relative(Pair.Fly(Site).Apogee.Meters, cost.Apogee[0], 1e-4);
        var late = (Pair with { Separation = Separation.ByPressureLatch(2.Seconds()) }).Fly(Site);
        Tolerance.Relative(late.Apogee.Meters, cost.Apogee[^1], 1e-4);
    }

    [Fact]
    public void Drag_parts_a_broad_light_booster_later_than_a_latch()
    {
        var latch = Pair.Fly(Site);
        var drag = (Pair with { Separation = Separation.ByDrag(90.Millimetres()) }).Fly(Site);
        Assert.True(drag.SeparationTime > latch.SeparationTime);
        Assert.True(drag.Apogee < latch.Apogee);
    }

    [Fact]
    public void Where_drag_presses_the_stages_together_they_never_part_and_that_is_said()
    {
        // A sustainer with four times the drag: it slows more than the booster.
        var sustainer = Pair.Sustainer with { MeasuredDrag = DragCurve.Constant(2, Pair.Sustainer.Body.ReferenceArea) };
        var stack = DragCurve.Constant(1.3, Pair.Booster.Body.ReferenceArea);
        var pair = Pair with { Sustainer = sustainer, MeasuredStackDrag = stack, Separation = Separation.ByDrag(90.Millimetres()) };
        var flight = pair.Fly(Site);
        Assert.Equal(ResultStatus.Failed, flight.Status);
        Assert.Empty(flight.Lines);
        Assert.Contains(flight.Findings, f => f.Message.Contains("presses them together", StringComparison.Ordinal));
        Assert.Contains("presses them together", Assert.Throws<InvalidOperationException>(() => flight.Apogee).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.3, "jet still runs")]
    [InlineData(5, "after apogee")]
    [InlineData(50, "the ground comes first")]
    public void A_parting_at_a_bad_time_has_no_answer_and_says_why(double seconds, string words)
    {
        var flight = (Pair with { Separation = Separation.ByTimer(seconds.Seconds()) }).Fly(Site);
        Assert.Equal(ResultStatus.Failed, flight.Status);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void In_still_air_six_degrees_climb_as_high_as_three()
    {
        Tolerance.Relative(Pair.Fly(Site).Apogee.Meters, Pair.FlySixDegrees(Site).Apogee.Meters, 1e-5);
    }

    [Fact]
    public void The_stack_is_a_vehicle_with_both_bodies_and_both_masses()
    {
        var stack = Pair.Stack(Site);
        Assert.DoesNotContain(stack.Validate(Site), f => f.Severity == FindingSeverity.Error);
        // 90 mm of nose become the shoulder between 70 and 90 mm.
        Assert.Equal(1.6 + 0.09 + 1.15, stack.Body.Length.Meters, 9);
        var loaded = Pair.Sustainer.Charge.WaterMass.Kilograms + Pair.Sustainer.GasKg(Site);
        Tolerance.Relative(Pair.Sustainer.MassProperties().Mass.Kilograms + Pair.Booster.MassProperties().Mass.Kilograms + loaded,
            stack.MassProperties().Mass.Kilograms, 1e-12);
        Assert.True(stack.Stability().Margin.Values.Min() > 1);
        // Of one diameter there is no shoulder: the booster's nose sits inside.
        var slim = Pair.Booster with
        {
            Body = new FinnedBody([Nose.Cone(90.Millimetres(), 70.Millimetres()), new BodyTube(1.15.Metres(), 70.Millimetres())],
                Pair.Booster.Body.Fins),
        };
        Assert.Equal(1.6 + 1.15, (Pair with { Booster = slim }).Stack(Site).Body.Length.Meters, 9);
    }

    [Fact]
    public void What_is_wrong_with_either_stage_is_said_of_that_stage()
    {
        var pair = Pair with
        {
            Booster = Pair.Booster with { NozzleEndAt = 30.Metres() },
            Sustainer = Pair.Sustainer with { Charge = Pair.Sustainer.Charge with { Pressure = 90.BarGauge() } },
        };
        var refused = Assert.Throws<InvalidDesignException>(() => pair.Fly(Site));
        Assert.Contains(refused.Findings, f => f.Message.StartsWith("booster: ", StringComparison.Ordinal));
        Assert.Contains(refused.Findings, f => f.Message.StartsWith("sustainer: ", StringComparison.Ordinal));
        var heavy = Pair with
        {
            Booster = Pair.Booster with { Charge = Pair.Booster.Charge with { Pressure = 6.BarGauge() } },
            Sustainer = Pair.Sustainer with { Parts = Pair.Sustainer.Parts.With(new("lead", 30.Kilograms(), 0.5.Metres())) },
        };
        Assert.Contains("would not lift", Assert.Throws<InvalidDesignException>(() => heavy.Fly(Site)).Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => Separation.ByDrag(0.Metres()));
    }

    // The booster's fins keep the stack straight; a sustainer without any turns over as soon as it is alone.
    [Fact]
    public void A_sustainer_that_is_unstable_alone_is_an_error_in_three_degrees_as_well()
    {
        var pair = SampleVehicles.TwoStages;
        var bare = pair with { Sustainer = pair.Sustainer with { Body = pair.Sustainer.Body with { Fins = [] } } };
        var flight = bare.Fly(SampleVehicles.Calm with { Rail = new(4.Metres()) });
        Assert.Contains(flight.Sustainer.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("on the way up", StringComparison.Ordinal));
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error);
    }
}
