using System.Runtime.CompilerServices;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// Hanging under a canopy, whose drag area grows as (t / t_f)^j while it fills; the body's own drag is left out. Unknowns: north, east,
/// down [m], their rates [m/s]. Source: T. W. Knacke, NWC TP 6575, 1991 (fill time and growth); Newton's second law.
/// </summary>
internal readonly struct CanopyPath(FlightNumbers numbers, double waterKg, double gasKg, double openedS, double fillS) : IOdeSystem,
    IDescribed
{
    public int Dimension => 6;

    // A call of its own: seven copies of all that it calls would be more than a step is allowed to take in.
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var felt = Felt(t, y, out _, out _);
        (dydt[0], dydt[1], dydt[2]) = (y[3], y[4], y[5]);
        dydt[3] = felt.X;
        dydt[4] = felt.Y;
        dydt[5] = felt.Z + StandardConstants.Gravity;
    }

    public AirSample Air(double t, ReadOnlySpan<double> y) => numbers.AirAt(t, -y[2]);

    public FlightRow Describe(double t, ReadOnlySpan<double> y)
    {
        var felt = Felt(t, y, out var air, out var through);
        var speed = through.Length;
        return new(t, Vector.From(y), Vector.From(y[3..]), speed / air.SoundMps, 0.5 * air.DensityKgM3 * speed * speed,
            felt.Length / StandardConstants.Gravity, 0, waterKg, gasKg)
        {
            Nose = new(0, 0, -1),
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector Felt(double t, ReadOnlySpan<double> y, out AirSample air, out Vector through)
    {
        air = Air(t, y);
        through = Vector.From(y[3..]) - air.WindMps;
        return -0.5 * air.DensityKgM3 * numbers.CanopyM2(t - openedS, fillS) * through.Length / (numbers.DryKg + waterKg + gasKg) * through;
    }
}
