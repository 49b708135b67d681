using System.Runtime.CompilerServices;
using NotebookKit.Flight.Drive;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Space;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// A point mass in free flight whose axis lies along the relative wind. Unknowns: north, east, down [m], their rates [m/s], then the
/// drive's own.
/// Source: Newton's second law; drag ½ ρ v² C_D A against the motion through the air.
/// </summary>
internal struct FreePath<TDrive>(FlightNumbers numbers, TDrive drive) : IFreePath<TDrive>
    where TDrive : struct, IDrive
{
    public const int Velocity = 3, OwnAt = 6;

    // Slower than this the relative wind has no direction worth the name; the axis is taken as it stood on the rail.
    private const double NoDirectionMps = 1e-6;

    public int Dimension => OwnAt + drive.Unknowns;

    public int Own => OwnAt;

    public TDrive Drive => drive;

    public int Ends => drive.Ends;

    public FlightNumbers Numbers => numbers;

    // A call of its own: seven copies of all that it calls would be more than a step is allowed to take in.
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var felt = Felt(t, y, dydt[OwnAt..], out _, out _, out _);
        (dydt[0], dydt[1], dydt[2]) = (y[3], y[4], y[5]);
        dydt[3] = felt.X;
        dydt[4] = felt.Y;
        dydt[5] = felt.Z + StandardConstants.Gravity;
    }

    public double End(int way, double ambientPa, ReadOnlySpan<double> y) => drive.End(way, ambientPa, y[OwnAt..]);

    public AirSample Air(double t, ReadOnlySpan<double> y) => numbers.AirAt(t, -y[2]);

    public FlightRow Describe(double t, ReadOnlySpan<double> y)
    {
        Span<double> rates = stackalloc double[DriveState.MostUnknowns];
        var felt = Felt(t, y, rates, out var air, out var through, out var state);
        var speed = through.Length;
        return new(t, Vector.From(y), Vector.From(y[Velocity..]), speed / air.SoundMps, 0.5 * air.DensityKgM3 * speed * speed,
            felt.Length / StandardConstants.Gravity, state.ThrustN, state.WaterKg, state.GasKg)
        {
            Nose = Direction(through, speed),
        };
    }

    /// <summary>Acceleration by all but weight [m/s²].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector Felt(double t, ReadOnlySpan<double> y, Span<double> ownRates, out AirSample air, out Vector through,
        out DriveState state)
    {
        air = Air(t, y);
        through = Vector.From(y[Velocity..]) - air.WindMps;
        var speed = through.Length;
        var drag = 0.5 * air.DensityKgM3 * numbers.DragM2(speed / air.SoundMps, air, drive.IsJetOn) * speed * speed;
        state = drive.Run(air.PressurePa, drag, speed, numbers.DryKg, y[OwnAt..], ownRates);
        return (state.ThrustN - drag) / (numbers.DryKg + drive.ContentsKg(y[OwnAt..])) * Direction(through, speed);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector Direction(in Vector through, double speed) => speed > NoDirectionMps ? 1 / speed * through : numbers.RailDirection;
}
