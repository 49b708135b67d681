using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Motion;

/// <summary>A state in the air that a flight goes on from. SI; north, east, down from the pad.</summary>
internal readonly record struct AirStart(double Time, Vector Position, Vector Velocity, Rotation Attitude, Vector Rates)
{
    /// <summary>A start without attitude.</summary>
    public static AirStart Point(double time, in Vector position, in Vector velocity)
        => new(time, position, velocity, Rotation.None, default);
}
