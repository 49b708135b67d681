using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Vents;

/// <summary>When a vessel is vented: its pressure has come down to the safe one.</summary>
internal struct VentEvents(VentSystem system, double safePa) : IOdeEvents
{
    public readonly int Count => 1;

    public readonly OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, true);

    public readonly double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => system.Gas(y).Pascals - safePa;

    public readonly void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
