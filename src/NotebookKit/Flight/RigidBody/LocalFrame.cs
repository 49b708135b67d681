using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>Where a point lies over the ground, and where north, east and down are there, along the inertial axes.</summary>
internal readonly record struct LocalFrame(double AltitudeM, Vector North, Vector East, Vector Down)
{
    /// <summary>Latitude, and longitude in the inertial frame, which doesn't turn with the ground [rad].</summary>
    public (double Latitude, double CelestialLongitude) Angles =>
        (Math.Atan2(-Down.Z, North.Z), Math.Atan2(-East.X, East.Y));

    /// <summary>Attitude of north, east and down in the inertial frame.</summary>
    public Rotation Attitude => Rotation.FromAxes(North, East, Down);

    /// <summary>A vector given by north, east and down.</summary>
    public Vector Out(in Vector local) => (local.X * North) + (local.Y * East) + (local.Z * Down);

    /// <summary>A vector's parts to north, east and down.</summary>
    public Vector In(in Vector inertial) => new(Vector.Dot(North, inertial), Vector.Dot(East, inertial), Vector.Dot(Down, inertial));
}
