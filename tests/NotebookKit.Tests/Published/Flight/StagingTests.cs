using NotebookKit.Flight.Staging;
using NotebookKit.Quantities;
using NotebookKit.Tests.Flight;

namespace NotebookKit.Tests.Published.Flight;

public class StagingTests
{
    private static readonly LaunchSite Site = SampleVehicles.Calm with { Rail = new(4.Metres()) };

    [Fact]
    [PublishedCase("F70", "Tsiolkovsky's rocket equation over two stages, 0.8 + 1.2 kg at 28 m/s below 0.5 + 0.6 kg at 30 m/s")]
    public void Ideal_gains_of_two_stages_add_up()
    {
        var first = TwoStageWorking.IdealGain(28, 3.1, 1.9);
        var second = TwoStageWorking.IdealGain(30, 1.1, 0.5);
        Tolerance.Relative(13.707350, first, 1e-7);
        Tolerance.Relative(23.653721, second, 1e-7);
        Tolerance.Relative(37.361071, first + second, 1e-7);
    }

    [Theory]
    [PublishedCase("F71", "Two impulses in a vacuum with a coast between: H = (v1 + v2)^2 / 2g - v2 tc")]
    [InlineData(0, 1651.940265)]
    [InlineData(1, 1551.940265)]
    public void Two_impulses_in_a_vacuum_reach_the_closed_form(double coastS, double height)
    {
        var numbers = SampleVehicles.Trainer.Numbers(Site) with { DragFactor = 0, Deployment = default };
        var (up, speed) = ((80 * coastS) - (9.80665 * coastS * coastS / 2), 80 - (9.80665 * coastS));
        var marks = FlightRun.Continue(numbers, null, FlightAccuracy.Recorded,
            AirStart.Point(coastS, new(0, 0, -up), new(0, 0, -(speed + 100))), false, new());
        Tolerance.Relative(height, marks.ApogeeM, 1e-8);
    }

    [Fact]
    [PublishedCase("F71", "Each second of delay costs the sustainer's own gain in speed, in metres; without drag, whatever the "
        + "length of its burn")]
    public void Without_drag_a_second_of_delay_costs_what_the_sustainer_gains_in_a_second()
    {
        var pair = SampleVehicles.TwoStages;
        // Air of one pressure at every height, thin enough to have no drag: a gas constant a million times that of air.
        var air = new SiteAir(new(0, 288.15, 101_325, 287.05e6, countsGeometric: false), 0, WindProfile.Calm, 4);
        var stack = pair.Stack(Site).Numbers(Site) with { DragFactor = 0, Air = air };
        var sustainer = pair.Sustainer.Numbers(Site) with { DragFactor = 0, Air = air };
        double Height(double delay, out double gain)
        {
            var waiting = pair with { Separation = Separation.ByPressureLatch(delay.Seconds()) };
            var marks = FlightRun.FlyStack(stack, null, waiting.Numbers(Site), FlightAccuracy.Recorded, null, out var end);
            var rows = new FlightRows();
            var up = FlightRun.Continue(sustainer, null, FlightAccuracy.Recorded, end, true, StageSeparation.Marks(marks), rows);
            var last = rows.Last(r => r.Time <= up.JetEndTime);
            gain = rows[0].Velocity.Z - last.Velocity.Z + (9.80665 * (last.Time - rows[0].Time));
            return up.ApogeeM;
        }

        var (at0, at1) = (Height(0, out var gain), Height(1, out _));
        Tolerance.Relative(gain, at0 - at1, 1e-5);
    }

    [Fact]
    [PublishedCase("F72", "Two bodies under one deceleration: drag separation at 80 m/s, 1.1 and 0.8 kg, 120 mm of joint")]
    public void Drag_parts_the_stages_as_the_interface_force_has_it()
    {
        const double Sustainer = 0.45 * 2.827433e-3, Booster = 0.60 * 6.361725e-3;
        var separation = new SeparationNumbers(SeparationTrigger.Drag, 0, 0.12, 1.1, 0.8,
            DragCurve.Constant(0.45, 2.827433e-3.SquareMetres()));
        var stack = SampleVehicles.Trainer.Numbers(Site) with { DragAreaM2 = Sustainer + Booster,
            JetOff = DragCurve.Constant(1, 1e-3.SquareMetres()) };
        var (up, down) = separation.Decelerations(stack, new AirSample(1.225, 340.294, 101_325, default), 80);
        Tolerance.Relative(4.534175, up, 1e-6);
        Tolerance.Relative(18.703472, down, 1e-6);
        Tolerance.Relative(0.130146, Math.Sqrt(2 * 0.12 / (down - up)), 1e-5);
    }

    [Theory]
    [PublishedCase("F73", "Delayed release: the stack coasts with its own mass and drag, then the sustainer with its own; closed form of "
        + "m dv/dt = -m g - k v², integrated by hand, piece by piece")]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(1.0)]
    public void A_delayed_release_follows_the_closed_form_piece_by_piece(double delayS)
    {
        const double StackCd = 0.55, SustainerCd = 0.46, Gravity = 9.80665, Density = 1.225;
        var pair = SampleVehicles.TwoStages with { Separation = Separation.ByPressureLatch(delayS.Seconds()) };
        // Air of one density at every height: where g/(R L) is one, pressure and temperature fall in step. The closed form knows no other
        // air.
        const double GasConstant = Gravity / AtmosphereLaw.Lapse;
        var air = new SiteAir(new(0, 101_325 / (GasConstant * Density), 101_325, GasConstant, countsGeometric: false), 0, WindProfile.Calm,
            4);
        FlightNumbers In(Vehicle vehicle, double cd)
        {
            var curve = DragCurve.Constant(cd, vehicle.Body.ReferenceArea);
            return vehicle.Numbers(Site) with { Air = air, JetOn = curve, JetOff = curve,
                DragAreaM2 = vehicle.Body.ReferenceArea.SquareMeters, Deployment = default };
        }

        var (stack, sustainer) = (In(pair.Stack(Site), StackCd), In(pair.Sustainer, SustainerCd));
        var (rows, upRows) = (new FlightRows(), new FlightRows());
        var marks = FlightRun.FlyStack(stack, null, pair.Numbers(Site), FlightAccuracy.Recorded, rows, out var end);
        var up = FlightRun.Continue(sustainer, null, FlightAccuracy.Recorded, end, true, StageSeparation.Marks(marks), upRows);

        // The stack from the end of the booster's jet: v = vt tan(atan(v0/vt) - g t/vt), h = vt²/g ln(cos(...)/cos(...)).
        var spent = rows.First(r => r.Time >= marks.JetEndTime);
        var terminal = Terminal(stack.DryKg + spent.WaterKg + spent.GasKg, StackCd * stack.DragAreaM2);
        var start = Math.Atan(-spent.Velocity.Z / terminal);
        var stop = start - (Gravity * delayS / terminal);
        Tolerance.Absolute(delayS, end.Time - marks.JetEndTime, 1e-12);
        Tolerance.Relative(terminal * Math.Tan(stop), -end.Velocity.Z, 1e-7);
        Tolerance.Relative(-spent.Position.Z + (terminal * terminal / Gravity * Math.Log(Math.Cos(stop) / Math.Cos(start))),
            -end.Position.Z, 1e-7);
        // The slower for waiting, but by less than gravity and the drag it began with have it.
        Assert.True(-end.Velocity.Z < -spent.Velocity.Z - (Gravity * delayS));
        Assert.True(-end.Velocity.Z > -spent.Velocity.Z - (Gravity * delayS * (1 + Math.Pow(spent.Velocity.Z / terminal, 2))));

        // The sustainer from the end of its own: h = vt²/2g ln(1 + v²/vt²).
        var coasts = upRows.First(r => r.Time >= up.JetEndTime);
        terminal = Terminal(sustainer.DryKg + coasts.WaterKg + coasts.GasKg, SustainerCd * sustainer.DragAreaM2);
        var (speed, height) = (-coasts.Velocity.Z, -coasts.Position.Z);
        Tolerance.Relative(height + (terminal * terminal / (2 * Gravity) * Math.Log(1 + (speed * speed / (terminal * terminal)))),
            up.ApogeeM, 1e-7);
        // Below the vacuum's top, by no more than the drag it began with takes over the whole climb.
        var vacuum = height + (speed * speed / (2 * Gravity));
        Assert.InRange(up.ApogeeM, vacuum - (speed * speed / (terminal * terminal) * (up.ApogeeM - height)), vacuum);

        static double Terminal(double massKg, double dragM2) => Math.Sqrt(2 * massKg * Gravity / (Density * dragM2));
    }
}
