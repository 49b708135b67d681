using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Networks;

/// <summary>What ends a stretch of a run: a gauge has come to where its valve is shut, a rating is passed, water is used up or has come.
/// In this order.</summary>
internal readonly struct NetworkEvents(NetworkModel model, (int Line, int Store, double Pascals)[] gauges, int[] rated,
    (int Line, int Kind)[] wet) : IOdeEvents
{
    /// <summary>A pascal above the rating, so that a fill to the rating itself ends by its gauge.</summary>
    private const double PastPa = 1;

    public int Count => gauges.Length + rated.Length + wet.Length;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Rising, true);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt)
    {
        if (index < gauges.Length) return model.Gas(gauges[index].Store, y).Pascals - gauges[index].Pascals;
        index -= gauges.Length;
        if (index < rated.Length) return model.Gas(rated[index], y).Pascals - model.Stores[rated[index]].RatedPa - PastPa;
        var (line, kind) = wet[index - rated.Length];
        return model.WaterEvent(line, kind, y);
    }

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
