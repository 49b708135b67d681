using NotebookKit.Flight.RigidBody;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Tests.Flight.RigidBody;

/// <summary>What must hold whatever flies: conservation, frames and signs.</summary>
public class RigidBodySystemTests
{
    private static readonly OdeSettings Tight = new() { RelativeTolerance = 1e-12, MaximumSteps = 2_000_000 };

    [Fact]
    public void Without_forces_energy_and_angular_momentum_stay()
    {
        // Three unequal inertias, spun near the middle axis: the motion that turns over again and again.
        var inertia = new Vector(0.3, 0.5, 0.65);
        var y = State(new(0, 0, 0), new(3, -2, 1), Rotation.FromYawPitchRoll(0.3, -0.4, 1), new(0.01, 6, 0.02));
        var before = (Momentum: Momentum(y, inertia), Energy: Energy(y, inertia));
        Integrate(new FlatEarth(0), new ConstantBody(2, inertia, 0, default), y, 60);
        var after = (Momentum: Momentum(y, inertia), Energy: Energy(y, inertia));

        Tolerance.Relative(before.Energy, after.Energy, 1e-9);
        Tolerance.Absolute(0, (after.Momentum - before.Momentum).Length / before.Momentum.Length, 1e-9);
        Tolerance.Absolute(180, y[0], 1e-8);
        Tolerance.Absolute(-120, y[1], 1e-8);
    }

    [Fact]
    public void Falling_round_a_sphere_keeps_orbital_energy_and_angular_momentum()
    {
        const double Mu = 3.986004418e14;
        var earth = new RoundEarth(6_371_007.1809, Mu, 7.292115e-5);
        var origin = earth.Position(0.4, 0.2, 300_000);
        var y = State(default, new(1500, 7000, 900), Rotation.None, default);
        double Orbital() => (0.5 * Vector.From(y.AsSpan(3)).Square) - (Mu / (origin + Vector.From(y)).Length);
        Vector Swept() => Vector.Cross(origin + Vector.From(y), Vector.From(y.AsSpan(3)));
        var (energy, momentum) = (Orbital(), Swept());

        var system = new RigidBodySystem<RoundEarth, NoAir, ConstantBody>(earth, default, new(1, new(1, 1, 1), 0, default), origin);
        Assert.True(OdeDriver.Integrate(ref system, 0, 600, y, Tight, Small).Succeeded);
        Tolerance.Relative(energy, Orbital(), 1e-10);
        Tolerance.Absolute(0, (Swept() - momentum).Length / momentum.Length, 1e-10);
    }

    [Fact]
    public void A_push_along_the_axis_goes_where_the_nose_points()
    {
        var y = State(default, default, Rotation.FromYawPitchRoll(Math.PI / 2, Math.PI / 6, 0), default);
        Integrate(new FlatEarth(0), new Pushed(new(10, 0, 0), default), y, 1);
        // East and up by 30 degrees, 10 N on 1 kg for 1 s.
        Tolerance.Absolute(0, y[3], 1e-10);
        Tolerance.Absolute(10 * Math.Cos(Math.PI / 6), y[4], 1e-10);
        Tolerance.Absolute(-5, y[5], 1e-10);
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 1, 0)]
    [InlineData(0, 0, 1)]
    public void A_moment_turns_about_its_own_axis_in_its_own_sense(double x, double yAxis, double z)
    {
        var y = State(default, default, Rotation.None, default);
        Integrate(new FlatEarth(0), new Pushed(default, new(0.2 * x, 0.2 * yAxis, 0.2 * z)), y, 1);
        // One kilogram metre squared about each axis: half a t squared.
        var (yaw, pitch, roll) = Rotation.From(y.AsSpan(6)).YawPitchRoll();
        Tolerance.Absolute(0.1 * x, roll, 1e-10);
        Tolerance.Absolute(0.1 * yAxis, pitch, 1e-10);
        Tolerance.Absolute(0.1 * z, yaw, 1e-10);
    }

    [Fact]
    public void A_side_wind_is_felt_from_the_side_it_comes_from()
    {
        // Nose to north, at rest over the ground, wind towards east: the body moves to its left through the air.
        var system = new RigidBodySystem<FlatEarth, Breeze, ConstantBody>(new(9.8), default, new(1, new(1, 1, 1), 0, default), default);
        var y = State(default, default, Rotation.None, default);
        var motion = system.Motion(0, y, out _);
        Assert.Equal(new Vector(0, -5, 0), motion.ThroughAir);
    }

    [Fact]
    public void A_body_at_rest_on_the_turning_ground_meets_no_wind()
    {
        var earth = new RoundEarth(6_371_007.1809, 3.986004418e14, 7.292115e-5);
        var origin = earth.Position(0.5, 0.1, 0);
        var system = new RigidBodySystem<RoundEarth, NoAir, ConstantBody>(earth, default, new(1, new(1, 1, 1), 0, default), origin);
        var y = State(default, Vector.Cross(earth.Spin, origin), Rotation.FromYawPitchRoll(0.3, 0.2, 0.1), default);
        Tolerance.Absolute(0, system.Motion(0, y, out var place).ThroughAir.Length, 1e-12);
        Tolerance.Absolute(0, system.OverGround(y, place).Length, 1e-12);
    }

    private static double[] Small => [1e-8, 1e-8, 1e-8, 1e-9, 1e-9, 1e-9, 1e-13, 1e-13, 1e-13, 1e-13, 1e-12, 1e-12, 1e-12];

    private static double[] State(Vector offset, Vector velocity, Rotation attitude, Vector rates)
    {
        var y = new double[13];
        offset.CopyTo(y);
        velocity.CopyTo(y.AsSpan(3));
        attitude.CopyTo(y.AsSpan(6));
        rates.CopyTo(y.AsSpan(10));
        return y;
    }

    private static void Integrate<TBody>(FlatEarth earth, TBody body, double[] y, double seconds)
        where TBody : struct, IBody
    {
        var system = new RigidBodySystem<FlatEarth, NoAir, TBody>(earth, default, body, default);
        var result = OdeDriver.Integrate(ref system, 0, seconds, y, Tight, Small);
        Assert.Equal(OdeStatus.Completed, result.Status);
    }

    private static Vector Momentum(double[] y, Vector inertia) =>
        Rotation.From(y.AsSpan(6)).Out(new(inertia.X * y[10], inertia.Y * y[11], inertia.Z * y[12]));

    private static double Energy(double[] y, Vector inertia) =>
        0.5 * ((inertia.X * y[10] * y[10]) + (inertia.Y * y[11] * y[11]) + (inertia.Z * y[12] * y[12]));

    private readonly struct Pushed(Vector force, Vector moment) : IBody
    {
        public int Unknowns => 0;

        public BodyLoads Loads(double t, in BodyMotion motion, ReadOnlySpan<double> own, Span<double> ownRates)
            => new(1, new(1, 1, 1), force, moment);
    }

    private readonly struct Breeze : IAir
    {
        public AirSample At(double t, double altitudeM) => new(1.2, 340, 101_325, new(0, 5, 0));
    }
}
