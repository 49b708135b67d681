using NotebookKit.Flight.RigidBody;
using NotebookKit.Numerics.Ode;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Flight;

public class RigidBodyTests
{
    [Fact]
    [PublishedCase("F38", "Goldstein, Classical Mechanics, 2nd ed. 1980, 5.6, torque-free symmetric top")]
    public void A_torque_free_top_precesses_at_the_textbook_rates()
    {
        // Ia 0.3, It 0.5 kg m2, spin 10 rad/s at 20 degrees to the angular momentum: body rate -4 rad/s, space rate 6.385067 rad/s.
        const double SideRate = 2.183821;
        var flight = Top(0.3, 0.5, 10, SideRate);
        var result = flight.Run();
        Assert.Equal(ResultStatus.Completed, result.Status);
        var last = result.Time.Count - 1;
        Tolerance.Absolute(10, Radians(result.RollRate[last]), 1e-9);
        Tolerance.Absolute(-1.427441, Radians(result.PitchRate[last]), 2e-6);
        Tolerance.Absolute(1.652721, Radians(result.YawRate[last]), 2e-6);

        // Energy and angular momentum in every row.
        for (var i = 0; i <= last; i++)
        {
            var (p, q, r) = (Radians(result.RollRate[i]), Radians(result.PitchRate[i]), Radians(result.YawRate[i]));
            Tolerance.Relative(16.192269, 0.5 * ((0.3 * p * p) + (0.5 * ((q * q) + (r * r)))), 1e-7);
            Tolerance.Relative(3.192533, Math.Sqrt(Math.Pow(0.3 * p, 2) + Math.Pow(0.5 * q, 2) + Math.Pow(0.5 * r, 2)), 2e-7);
        }
    }

    [Fact]
    [PublishedCase("F38", "Goldstein, Classical Mechanics, 2nd ed. 1980, 5.6, torque-free symmetric top")]
    public void In_space_the_axis_goes_round_the_angular_momentum_at_its_own_rate()
    {
        // With roll axis 20 degrees off the momentum, the axis returns after 2 pi / 6.385067 s.
        var inertia = new Vector(0.3, 0.5, 0.5);
        var system = new RigidBodySystem<FlatEarth, NoAir, ConstantBody>(new(0), default, new(1, inertia, 0, default), default);
        var y = new double[13];
        Rotation.None.CopyTo(y.AsSpan(6));
        (y[10], y[11]) = (10, 0.3 / 0.5 * 10 * Math.Tan(20 * Math.PI / 180));
        var before = Rotation.From(y.AsSpan(6)).Out(new(1, 0, 0));
        var tolerance = Enumerable.Repeat(1e-13, 13).ToArray();
        var settings = new OdeSettings { RelativeTolerance = 1e-12, MaximumSteps = 1_000_000 };
        var result = OdeDriver.Integrate(ref system, 0, 2 * Math.PI / 6.385067, y, settings, tolerance);
        Assert.True(result.Succeeded);
        var after = Rotation.From(y.AsSpan(6)).Out(new(1, 0, 0));
        Tolerance.Absolute(0, (after - before).Length, 2e-7);
    }

    [Fact]
    [PublishedCase("F38", "Goldstein, Classical Mechanics, 2nd ed. 1980, 5.6, numbers of a slender body")]
    public void A_slender_body_precesses_against_its_spin()
    {
        // Ia 6.5e-3, It 0.42 kg m2, spin 30 rad/s, 5 degrees: body rate -29.535714 rad/s.
        var sideRate = 6.5e-3 / 0.42 * 30 * Math.Tan(5 * Math.PI / 180);
        var result = Top(6.5e-3, 0.42, 30, sideRate).Run();
        var angle = Math.Atan2(result.YawRate[^1], result.PitchRate[^1]);
        Tolerance.Absolute(0, Math.IEEERemainder(angle - -29.535714, 2 * Math.PI), 1e-5);
    }

    [Fact]
    [PublishedCase("F37", "Closed form of the parabola in a vacuum over flat ground")]
    public void A_throw_in_a_vacuum_is_a_parabola()
    {
        var (sin, cos) = Math.SinCos(80 * Math.PI / 180);
        var flight = new FreeBodyFlight(Ball(0), new() { North = (100 * cos).MetresPerSecond(), Down = (-100 * sin).MetresPerSecond() })
        {
            Atmosphere = null,
            Duration = 60.Seconds(),
            Interval = 0.05.Seconds(),
        };
        var result = flight.Run();
        Assert.True(result.Landed);
        Tolerance.Relative(20.084489, result.Time[^1], 5e-8);
        Tolerance.Relative(348.763485, result.Latitude[^1], 1e-8);
        // The apex lies at most half an interval from a row: 9.80665 x 0.025^2 / 2 below it.
        Tolerance.Absolute(494.484003, result.Altitude.Values.Max(), 3.1e-3);
    }

    [Theory]
    [PublishedCase("F35", "Closed form of a fall from rest with drag in proportion to speed squared at constant density")]
    [InlineData(1, 9.789660, 4.899075)]
    [InlineData(5, 47.010422, 120.011841)]
    [InlineData(20, 121.533349, 1514.758130)]
    public void A_fall_from_rest_reaches_the_closed_form(double seconds, double speed, double fallen)
    {
        // Constant density through a body of its own air: 1.5 kg, Cd 0.46 on 60 mm.
        var body = new ConstantBody(1.5, new(1, 1, 1), 0.46 * Math.PI / 4 * 0.06 * 0.06, default);
        var system = new RigidBodySystem<FlatEarth, ConstantAir, ConstantBody>(new(9.80665), default, body, new(0, 0, -2000));
        var y = new double[13];
        Rotation.None.CopyTo(y.AsSpan(6));
        var tolerance = Enumerable.Repeat(1e-10, 13).ToArray();
        Assert.True(OdeDriver.Integrate(ref system, 0, seconds, y, new() { RelativeTolerance = 1e-11 }, tolerance).Succeeded);
        Tolerance.Relative(speed, y[5], 1e-7);
        Tolerance.Relative(fallen, y[2], 2e-7);
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static FreeBody Ball(double drag) => new("ball", 1.Kilograms(), Inertia(0.01), Inertia(0.01), Inertia(0.01)) { Drag = drag };

    private static MassMomentOfInertia Inertia(double kgM2) => MassMomentOfInertia.FromKilogramSquareMeters(kgM2);

    private static FreeBodyFlight Top(double axial, double across, double spin, double sideRate) =>
        new(new FreeBody("top", 1.Kilograms(), Inertia(axial), Inertia(across), Inertia(across)),
            new BodyStart { Altitude = 1000.Metres(), RollRate = RotationalSpeed.FromRadiansPerSecond(spin),
                PitchRate = RotationalSpeed.FromRadiansPerSecond(sideRate) })
        {
            Earth = Earth.FlatWith(Acceleration.Zero),
            Atmosphere = null,
            Duration = 1.Seconds(),
            Interval = 0.1.Seconds(),
        };

    private readonly struct ConstantAir : IAir
    {
        public AirSample At(double t, double altitudeM) => new(1.225, 340.294, 101_325, default);
    }
}
