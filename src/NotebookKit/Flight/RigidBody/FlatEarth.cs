using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>Flat ground at rest with constant gravity; the inertial axes are north, east and down, with the origin at zero
/// altitude.</summary>
internal readonly struct FlatEarth(double gravity) : IEarth
{
    public Vector Spin => default;

    public Vector Gravitation(in Vector position) => new(0, 0, gravity);

    public LocalFrame At(in Vector position) => new(-position.Z, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    public Vector Position(double latitude, double longitude, double altitudeM) => new(0, 0, -altitudeM);
}
