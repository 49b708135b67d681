using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// Watches for the last water (or the last but a little), spent pressure, the top of the flight and the maximum speed while water leaves.
/// Serves the start of the jet as well, whose first three unknowns are the same.
/// </summary>
internal struct WaterEvents<TMount>(WaterPhase<TMount> phase, double endPressureRatio, double lastM3) : IOdeEvents
    where TMount : struct, IMount
{
    public const int WaterOut = 0, Spent = 1, Top = 2, Fastest = 3;

    /// <summary>Keeps a start from rest on the positive side, so that a vehicle that sinks at once is seen to [m/s].</summary>
    public const double Rest = 1e-12;

    public double FastestTime { get; private set; } = double.NaN;

    public double FastestSpeed { get; private set; }

    public double FastestHeight { get; private set; }

    public int Count => phase.IsHeld ? 2 : 4;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, index != Fastest);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => index switch
    {
        WaterOut => lastM3 - y[2],
        Spent => phase.GasPa(y[2]) - endPressureRatio * phase.AmbientPa(y[0]),
        Top => y[1] + Rest,
        _ => dydt[1],
    };

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
        if (index != Fastest || y[1] <= FastestSpeed) return;
        FastestTime = t;
        FastestSpeed = y[1];
        FastestHeight = y[0];
    }
}
