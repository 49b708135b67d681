using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.Motion;

/// <summary>Watches for the ground, and for the top where the canopy came out before it.</summary>
internal readonly struct LandingEvents(bool hasTopped) : IOdeEvents
{
    public const int Ground = 0, Apogee = 1;

    public int Count => 2;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, IsTerminal: true);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => index == Ground ? -y[2] : hasTopped ? -1
        : -y[5];

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
