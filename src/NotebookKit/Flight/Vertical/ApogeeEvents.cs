using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.Vertical;

/// <summary>Watches for the top of a flight.</summary>
internal readonly struct ApogeeEvents : IOdeEvents
{
    public int Count => 1;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, true);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => y[1];

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
