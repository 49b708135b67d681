using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>How a body moves through the air. Body axes: x forward along the axis, y to the right, z down.</summary>
/// <param name="AltitudeM">Altitude of its centre of gravity above sea level [m].</param>
/// <param name="Air">The air there.</param>
/// <param name="ThroughAir">Velocity of the centre of gravity relative to the air, along the body axes [m/s].</param>
/// <param name="RatesToAir">Turning rates relative to the air, which turns with the ground, about the body axes [rad/s].</param>
/// <param name="Rates">Turning rates in the inertial frame, about the body axes [rad/s].</param>
internal readonly record struct BodyMotion(double AltitudeM, AirSample Air, Vector ThroughAir, Vector RatesToAir, Vector Rates)
{
    public double SpeedMps => ThroughAir.Length;

    public double Mach => SpeedMps / Air.SoundMps;

    public double DynamicPressurePa => 0.5 * Air.DensityKgM3 * ThroughAir.Square;
}
