using NotebookKit.Flight.Drive;
using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Recovery;
using NotebookKit.Tests.Flight;

namespace NotebookKit.Tests.Published.Flight;

public class PointFlightTests
{
    private static FlightNumbers Numbers { get; } = SampleVehicles.Trainer.Numbers(SampleVehicles.Calm) with
    {
        DryKg = 1.5,
        JetOff = DragCurve.Constant(0.46, (Math.PI / 4 * 0.06 * 0.06).SquareMetres()),
        DragAreaM2 = Math.PI / 4 * 0.06 * 0.06,
        Air = ConstantDensity(WindProfile.Calm),
        Deployment = default,
    };

    [Fact]
    [PublishedCase("F34", "Closed form of a coast up and a fall back against drag in proportion to speed squared, constant density")]
    public void A_coast_reaches_the_closed_form_and_comes_back_at_its_speed()
    {
        var marks = FlightRun.Continue(Numbers, null, FlightAccuracy.Recorded, AirStart.Point(0, default, new(0, 0, -120)), false, new());
        Tolerance.Relative(542.778931, marks.ApogeeM, 1e-7);
        Tolerance.Relative(10.023762, marks.ApogeeTime, 1e-7);
        Tolerance.Relative(89.947784, marks.LandingSpeed, 1e-7);
        Tolerance.Relative(10.023762 + 11.033226, marks.LandingTime, 1e-7);
    }

    [Fact]
    [PublishedCase("F34", "Closed form of a coast against drag in proportion to speed squared; vacuum")]
    public void A_coast_without_drag_reaches_the_vacuum_height()
    {
        var (height, time) = Coast(Numbers with { DragFactor = 0 }, 120, 0);
        Tolerance.Relative(734.195673, height, 1e-8);
        Tolerance.Relative(12.236595, time, 1e-7);
    }

    [Fact]
    [PublishedCase("F37", "Closed form of the parabola in a vacuum over flat ground")]
    public void A_throw_without_drag_is_a_parabola()
    {
        var (sin, cos) = Math.SinCos(80 * Math.PI / 180);
        var marks = FlightRun.Continue(
            Numbers with { DragFactor = 0 }, null, FlightAccuracy.Recorded, AirStart.Point(0, default, new(100 * cos, 0, -100 * sin)),
                false, new());
        Tolerance.Relative(348.763485, marks.LandingAt.X, 1e-8);
        Tolerance.Relative(494.484003, marks.ApogeeM, 1e-8);
        Tolerance.Relative(20.084489, marks.LandingTime, 5e-8);
    }

    [Theory]
    [PublishedCase("F33", "Exit from a rail at constant acceleration, v² = 2 a L; angle of attack by crosswind over speed")]
    [InlineData(1.5, 150, 21.213203, 13.262676)]
    [InlineData(2, 100, 20.000, 14.036243)]
    [InlineData(3, 60, 18.973666, 14.763133)]
    public void Off_the_rail_the_wind_comes_in_at_the_angle_of_wind_over_speed(double lengthM, double acceleration, double speed,
        double degrees)
    {
        // A drive of constant net acceleration on the library's own rail equations, 5 m/s across.
        var numbers = SampleVehicles.Trainer.Numbers(SampleVehicles.Calm
            with { Rail = new(lengthM.Metres()), Wind = WindProfile.Uniform(5.MetresPerSecond()) }) with { DragFactor = 0, DryKg = 2 };
        var path = new RailPath<Steady>(numbers, new(2 * (acceleration + 9.80665)));
        var events = new RailEvents<Steady>(path, numbers.RailM, new());
        var observer = new NoObserver();
        Span<double> y = [0, 0];
        var result = OdeDriver.Integrate(ref path, ref events, ref observer, 0, 10, y, new() { RelativeTolerance = 1e-10 }, [1e-12, 1e-12]);
        Assert.Equal(RailEvents<Steady>.Exit, result.TerminalEvent);
        Tolerance.Relative(speed, y[1], 1e-7);
        var through = path.ThroughAir(y[1], path.Air(0, y));
        var angle = Math.Atan2(Vector.Cross(numbers.RailDirection, through).Length, Vector.Dot(numbers.RailDirection, through));
        Tolerance.Relative(degrees, angle * 180 / Math.PI, 1e-6);
    }

    [Fact]
    [PublishedCase("F53", "Knacke, Parachute Recovery Systems Design Manual, NWC TP 6575, 1991: weight equals drag, flat circular "
        + "canopy at 0.75")]
    public void Under_its_canopy_it_comes_down_at_the_handbooks_speed()
    {
        Tolerance.Relative(6.385242, Descend(WindProfile.Calm).LandingVelocity.Z, 1e-6);
    }

    [Theory]
    [PublishedCase("F62", "Drift from 300 m under a canopy by the wind profile's integral over height, constant density")]
    [InlineData("uniform", 234.9167, 0)]
    [InlineData("power", 334.1483, 0.1556)]
    [InlineData("log", 332.0231, 0.2655)]
    public void It_drifts_as_far_as_the_wind_carries_it(string law, double drift, double belowTwoMetres)
    {
        var wind = law switch
        {
            "uniform" => WindProfile.Uniform(5.MetresPerSecond()),
            "power" => WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres()),
            _ => WindProfile.LogLaw(5.MetresPerSecond(), 10.Metres(), 0.03.Metres()),
        };
        // The printed integral lets the canopy follow the wind at once. It lags by v/g = 0.651 s, which the change of its speed over the
        // way down makes metres of; and below 2 m the wind here stays as it is at 2 m.
        var landed = Descend(wind);
        var lag = 6.385242 / 9.80665 * (wind.At(300.Metres()).MetersPerSecond - landed.LandingVelocity.Y);
        Tolerance.Absolute(drift, landed.LandingAt.Y - lag - belowTwoMetres, 0.02);
    }

    private static FlightMarks Descend(WindProfile wind)
    {
        var canopy = new Canopy(CanopyType.FlatCircular, 1.Metres()) { DragCoefficient = 0.75 };
        var numbers = (SampleVehicles.Trainer with { Canopy = canopy }).Numbers(SampleVehicles.Calm)
            with { DryKg = 1.5, Air = ConstantDensity(wind) };
        numbers = numbers with { Deployment = numbers.Deployment with { FillM = 1e-6 } };
        var start = wind.At(300.Metres()).MetersPerSecond;
        return FlightRun.Continue(
            numbers, null, FlightAccuracy.Recorded, AirStart.Point(0, new(0, 0, -300), new(0, start, 6.385242)), false,
                new() { ApogeeTime = 0, ApogeeM = 300 });
    }

    /// <summary>Air of 1.225 kg/m³ at every height: with a gas constant of gravity over lapse, pressure falls as temperature
    /// does.</summary>
    private static SiteAir ConstantDensity(WindProfile wind)
    {
        const double GasConstant = StandardConstants.Gravity / AtmosphereLaw.Lapse;
        return new(new(0, 288.15, 1.225 * GasConstant * 288.15, GasConstant, countsGeometric: false), 0, wind, 2);
    }

    private static (double Height, double Time) Coast(FlightNumbers numbers, double up, double sideways)
    {
        var marks = FlightRun.Continue(numbers, null, FlightAccuracy.Recorded, AirStart.Point(0, default, new(sideways, 0, -up)), false,
            new());
        Assert.Null(marks.Failure);
        return (marks.ApogeeM, marks.ApogeeTime);
    }

    private readonly struct Steady(double thrustN) : IDrive
    {
        public int Unknowns => 0;

        public bool IsJetOn => false;

        public int Ends => 0;

        public double ContentsKg(ReadOnlySpan<double> own) => 0;

        public DriveState Run(double ambientPa, double resistanceN, double speedMps, double dryKg, ReadOnlySpan<double> own,
            Span<double> ownRates) => new(thrustN, 0, 0, 0, 0);

        public double End(int way, double ambientPa, ReadOnlySpan<double> own) => 1;
    }
}
