using NotebookKit.Flight.Drive;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Space;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Motion;

/// <summary>A vehicle in free flight in six degrees of freedom over flat ground: the rigid-body equations, able to say what a state
/// means.</summary>
internal struct VehiclePath<TDrive>(FlightNumbers numbers, VehicleNumbers vehicle, TDrive drive) : IFreePath<TDrive>
    where TDrive : struct, IDrive
{
    public const int OwnAt = RigidBodySystem<FlatEarth, SiteAir, VehicleBody<TDrive>>.Own;

    private VehicleBody<TDrive> _body = new(numbers, vehicle, drive);

    // The origin lies at the pad; flat ground counts altitude from sea level.
    private RigidBodySystem<FlatEarth, SiteAir, VehicleBody<TDrive>> _system = new(
        new(StandardConstants.Gravity), numbers.Air, new(numbers, vehicle, drive), new(0, 0, -numbers.Air.ElevationM));

    public TDrive Drive => drive;

    public int Ends => drive.Ends;

    public FlightNumbers Numbers => numbers;

    public int Own => OwnAt;

    public int Dimension => _system.Dimension;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt) => _system.Derivatives(t, y, dydt);

    public BodyMotion Motion(double t, ReadOnlySpan<double> y) => _system.Motion(t, y, out _);

    public double End(int way, double ambientPa, ReadOnlySpan<double> y) => drive.End(way, ambientPa, y[OwnAt..]);

    public AirSample Air(double t, ReadOnlySpan<double> y) => numbers.AirAt(t, -y[2]);

    public FlightRow Describe(double t, ReadOnlySpan<double> y)
    {
        Span<double> rates = stackalloc double[DriveState.MostUnknowns];
        var motion = Motion(t, y);
        var loads = _body.Loads(motion, y[OwnAt..], rates, out var state);
        var through = motion.ThroughAir;
        return new(t, Vector.From(y), Vector.From(y[3..]), motion.Mach, motion.DynamicPressurePa,
            loads.Force.Length / loads.MassKg / StandardConstants.Gravity, state.ThrustN, state.WaterKg, state.GasKg)
        {
            AngleOfAttack = AngleOfAttack(through),
            Rates = motion.Rates,
            Nose = Rotation.From(y[6..]).Out(new(1, 0, 0)),
            PitchFrequency = _body.PitchFrequency(motion, state),
        };
    }

    /// <summary>Angle between the axis and the velocity through the air [rad].</summary>
    public static double AngleOfAttack(in Vector throughAir) =>
        Math.Atan2(Math.Sqrt((throughAir.Y * throughAir.Y) + (throughAir.Z * throughAir.Z)), throughAir.X);
}
