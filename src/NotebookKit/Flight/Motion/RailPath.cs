using System.Runtime.CompilerServices;
using NotebookKit.Flight.Drive;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// Along the rail, with friction by the weight's part across it. Unknowns: way along the rail [m], speed [m/s], then the drive's own.
/// Source: Newton's second law; Coulomb friction.
/// </summary>
internal struct RailPath<TDrive>(FlightNumbers numbers, TDrive drive) : IOdeSystem, IDescribed
    where TDrive : struct, IDrive
{
    public const int Own = 2;

    public int Dimension => Own + drive.Unknowns;

    public TDrive Drive => drive;

    public int Ends => drive.Ends;

    // A call of its own: seven copies of all that it calls would be more than a step is allowed to take in.
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var along = Forces(t, y, dydt[Own..], out _, out _);
        dydt[0] = y[1];
        dydt[1] = along;
    }

    public double AmbientPa(double t, ReadOnlySpan<double> y) => Air(t, y).PressurePa;

    public double End(int way, double ambientPa, ReadOnlySpan<double> y) => drive.End(way, ambientPa, y[Own..]);

    public AirSample Air(double t, ReadOnlySpan<double> y) => numbers.AirAt(t, -y[0] * numbers.RailDirection.Z);

    /// <summary>Velocity through the air at a speed along the rail.</summary>
    public Vector ThroughAir(double speed, in AirSample air) => (speed * numbers.RailDirection) - air.WindMps;

    public FlightRow Describe(double t, ReadOnlySpan<double> y)
    {
        Span<double> rates = stackalloc double[DriveState.MostUnknowns];
        var along = Forces(t, y, rates, out var air, out var state);
        var through = ThroughAir(y[1], air).Length;
        return new(t, y[0] * numbers.RailDirection, y[1] * numbers.RailDirection, through / air.SoundMps,
            0.5 * air.DensityKgM3 * through * through,
            (along - (StandardConstants.Gravity * numbers.RailDirection.Z)) / StandardConstants.Gravity, state.ThrustN, state.WaterKg,
                state.GasKg)
        {
            Nose = numbers.RailDirection,
        };
    }

    /// <summary>Acceleration along the rail [m/s²].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Forces(double t, ReadOnlySpan<double> y, Span<double> ownRates, out AirSample air, out DriveState state)
    {
        var up = -numbers.RailDirection.Z;
        air = Air(t, y);
        var through = ThroughAir(y[1], air);
        var speed = through.Length;
        var drag = 0.5 * air.DensityKgM3 * numbers.DragM2(speed / air.SoundMps, air, drive.IsJetOn) * speed * Vector.Dot(through,
            numbers.RailDirection);

        var mass = numbers.DryKg + drive.ContentsKg(y[Own..]);
        var friction = numbers.RailFriction * mass * StandardConstants.Gravity * Math.Sqrt(Math.Max(0, 1 - (up * up)));
        state = drive.Run(air.PressurePa, drag + friction, y[1], numbers.DryKg, y[Own..], ownRates);
        return ((state.ThrustN - drag - friction) / mass) - (StandardConstants.Gravity * up);
    }
}
