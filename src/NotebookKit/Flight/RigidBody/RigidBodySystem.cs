using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>
/// Equations of motion of a rigid body in six degrees of freedom, in an inertial frame, over any Earth and through any air.
/// Source: B. L. Stevens, F. L. Lewis, Aircraft Control and Simulation, 2nd ed. 2003, 1.5 (unverified).
/// </summary>
/// <remarks>
/// Unknowns: position relative to <c>origin</c> (3), so that the digits are not spent on the Earth's radius; inertial velocity (3);
/// attitude as a quaternion from body to inertial axes (4); inertial turning rates about the body axes (3); then the body's own.
/// </remarks>
internal struct RigidBodySystem<TEarth, TAir, TBody>(TEarth earth, TAir air, TBody body, Vector origin) : IOdeSystem
    where TEarth : struct, IEarth
    where TAir : struct, IAir
    where TBody : struct, IBody
{
    public const int Velocity = 3, Attitude = 6, Rates = 10, Own = 13;

    public TEarth Earth => earth;

    public int Dimension => Own + body.Unknowns;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var motion = Motion(t, y, out _);
        var loads = body.Loads(t, motion, y[Own..], dydt[Own..]);
        var attitude = Rotation.From(y[Attitude..]);
        var rates = Vector.From(y[Rates..]);
        var inertia = loads.Inertia;

        y.Slice(Velocity, 3).CopyTo(dydt);
        (earth.Gravitation(Position(y)) + (1 / loads.MassKg * attitude.Out(loads.Force))).CopyTo(dydt[Velocity..]);
        attitude.Rate(rates, dydt[Attitude..]);
        dydt[Rates] = (loads.Moment.X + ((inertia.Y - inertia.Z) * rates.Y * rates.Z)) / inertia.X;
        dydt[Rates + 1] = (loads.Moment.Y + ((inertia.Z - inertia.X) * rates.Z * rates.X)) / inertia.Y;
        dydt[Rates + 2] = (loads.Moment.Z + ((inertia.X - inertia.Y) * rates.X * rates.Y)) / inertia.Z;
    }

    /// <summary>Position in the inertial frame [m].</summary>
    public Vector Position(ReadOnlySpan<double> y) => origin + Vector.From(y);

    /// <summary>The motion through the air at a state, and the place it is at.</summary>
    public BodyMotion Motion(double t, ReadOnlySpan<double> y, out LocalFrame place)
    {
        var position = Position(y);
        place = earth.At(position);
        var sample = air.At(t, place.AltitudeM);
        var attitude = Rotation.From(y[Attitude..]);
        var rates = Vector.From(y[Rates..]);
        var throughAir = Vector.From(y[Velocity..]) - Vector.Cross(earth.Spin, position) - place.Out(sample.WindMps);
        return new(place.AltitudeM, sample, attitude.In(throughAir), rates - attitude.In(earth.Spin), rates);
    }

    /// <summary>Velocity over the ground to north, east and down [m/s].</summary>
    public Vector OverGround(ReadOnlySpan<double> y, in LocalFrame place) =>
        place.In(Vector.From(y[Velocity..]) - Vector.Cross(earth.Spin, Position(y)));
}
