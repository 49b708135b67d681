using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Watches for the end of choked flow, the agreed end of the jet, the top of the flight and the maximum speed while gas
/// leaves.</summary>
internal struct AirEvents<TAir>(TAir phase, double endPressureRatio) : IOdeEvents
    where TAir : struct, IAirPhase<TAir>
{
    public const int Spent = 0, Unchoked = 1, Top = 2, Fastest = 3;

    private double _heightM = double.NaN, _ambientPa;

    public double UnchokedTime { get; private set; } = double.NaN;

    public double FastestTime { get; private set; } = double.NaN;

    public double FastestSpeed { get; private set; }

    public double FastestHeight { get; private set; }

    public int Count => phase.IsHeld ? 2 : 4;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, index is Spent or Top);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => index switch
    {
        Spent => phase.Pressure(y) - endPressureRatio * Ambient(y),
        Unchoked => phase.ChokedBy(y, Ambient(y)),
        Top => y[1] + 1e-12,
        _ => dydt[1],
    };

    // Both ends of the flow are asked for at every state, and both want the air outside.
    private double Ambient(ReadOnlySpan<double> y)
    {
        if (y[0] != _heightM) (_heightM, _ambientPa) = (y[0], phase.Ambient(y));
        return _ambientPa;
    }

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
        if (index == Unchoked) UnchokedTime = t;
        if (index != Fastest || y[1] <= FastestSpeed) return;
        FastestTime = t;
        FastestSpeed = y[1];
        FastestHeight = y[0];
    }
}
