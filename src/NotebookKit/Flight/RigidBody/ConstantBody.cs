using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>A body of constant mass with drag and damping, in SI numbers.</summary>
/// <param name="massKg">Mass [kg].</param>
/// <param name="inertia">Principal moments of inertia [kg m²].</param>
/// <param name="dragM2">Drag coefficient times reference area [m²].</param>
/// <param name="damping">Damping derivative times area times length squared, about each axis [m⁴].</param>
internal readonly struct ConstantBody(double massKg, Vector inertia, double dragM2, Vector damping) : IBody
{
    // Below this speed the damping ratio rate × length / 2V is taken at it: 0.5 ft/s, as the published check cases have it.
    private const double SlowestMps = 0.1524;

    public int Unknowns => 0;

    public BodyLoads Loads(double t, in BodyMotion motion, ReadOnlySpan<double> own, Span<double> ownRates)
    {
        var speed = motion.SpeedMps;
        var pressure = motion.DynamicPressurePa;
        var force = -0.5 * motion.Air.DensityKgM3 * speed * dragM2 * motion.ThroughAir;
        var turning = pressure / (2 * Math.Max(speed, SlowestMps));
        var rates = motion.RatesToAir;
        return new(massKg, inertia, force,
            turning * new Vector(damping.X * rates.X, damping.Y * rates.Y, damping.Z * rates.Z));
    }
}
