using NotebookKit.Flight.Design;
using NotebookKit.Flight.Drive;
using NotebookKit.Flight.RigidBody;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// A vehicle as the rigid-body equations see it: drive, changing mass, slender-body aerodynamics.
/// Source: J. S. Barrowman, M.S. thesis, 1967 (forces and roll, unverified); H. J. Allen, E. W. Perkins, NACA TR 1048, 1951 (cross flow and
/// axial force at an angle, unverified); W. T. Thomson, Introduction to Space Dynamics, 1961 (jet damping, unverified).
/// </summary>
internal struct VehicleBody<TDrive>(FlightNumbers numbers, VehicleNumbers vehicle, TDrive drive) : IBody
    where TDrive : struct, IDrive
{
    // How far ahead the contents are looked at for the rate at which the pitch inertia changes [s].
    private const double AheadS = 1e-4;

    public int Unknowns => drive.Unknowns;

    public TDrive Drive => drive;

    public BodyLoads Loads(double t, in BodyMotion motion, ReadOnlySpan<double> own, Span<double> ownRates)
        => Loads(motion, own, ownRates, out _);

    public BodyLoads Loads(in BodyMotion motion, ReadOnlySpan<double> own, Span<double> ownRates, out DriveState state)
    {
        var (through, rates) = (motion.ThroughAir, motion.RatesToAir);
        var speed = through.Length;
        var density = motion.Air.DensityKgM3;
        var mach = speed / motion.Air.SoundMps;
        var aero = vehicle.Aero.At(mach);

        // Along the axis the drag coefficient goes with the square of the cosine.
        var axial = 0.5 * density * numbers.DragM2(mach, motion.Air, drive.IsJetOn) * through.X * Math.Abs(through.X);
        state = drive.Run(motion.Air.PressurePa, axial, through.X, numbers.DryKg, own, ownRates);
        var mass = vehicle.Dry.With(vehicle.Chamber.Contents(state.WaterKg, state.GasKg));

        var (moment, damping) = (aero.MomentAbout(mass.CentreM), aero.DampingAbout(mass.CentreM));
        var push = 0.5 * density * speed;
        var side = -push * ((aero.Slope * through.Y) - (moment * rates.Z));
        var down = -push * ((aero.Slope * through.Z) + (moment * rates.Y));
        var roll = push * (((aero.RollBuiltIn + (vehicle.Cant * aero.RollByCant)) * through.X) + (aero.RollDamping * rates.X));
        var pitch = -push * ((moment * through.Z) + (damping * rates.Y));
        var yaw = push * ((moment * through.Y) - (damping * rates.Z));
        vehicle.Aero.AddCrossFlow(density, through, rates, mass.CentreM, ref side, ref down, ref pitch, ref yaw);

        var jet = drive.IsJetOn ? JetDamping(state, mass) : 0;
        return new(mass.MassKg, new(mass.RollKgM2, mass.PitchKgM2, mass.PitchKgM2),
            new(state.ThrustN - axial, side, down),
            new(roll, pitch - (jet * motion.Rates.Y), yaw - (jet * motion.Rates.Z)));
    }

    /// <summary>Natural frequency of pitching at a small angle [rad/s]; negative where it is unstable and grows instead.</summary>
    public double PitchFrequency(in BodyMotion motion, in DriveState state)
    {
        var mass = vehicle.Dry.With(vehicle.Chamber.Contents(state.WaterKg, state.GasKg));
        var stiffness = motion.DynamicPressurePa * vehicle.Aero.At(motion.Mach).MomentAbout(mass.CentreM) / mass.PitchKgM2;
        return Math.CopySign(Math.Sqrt(Math.Abs(stiffness)), stiffness);
    }

    /// <summary>Moment against pitching per pitch rate: what the leaving mass carries off, less what the shrinking inertia gives back [N m
    /// s].</summary>
    private double JetDamping(in DriveState state, in MassState mass)
    {
        var gone = state.OutKgS * AheadS;
        var isWater = state.WaterKg > gone;
        var ahead = vehicle.Dry.With(vehicle.Chamber.Contents(isWater ? state.WaterKg - gone : state.WaterKg,
            isWater ? state.GasKg : state.GasKg - gone));
        var arm = vehicle.Chamber.NozzleEndM - mass.CentreM;
        return (state.OutKgS * arm * arm) + ((ahead.PitchKgM2 - mass.PitchKgM2) / AheadS);
    }
}
