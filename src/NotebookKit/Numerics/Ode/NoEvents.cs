namespace NotebookKit.Numerics.Ode;

/// <summary>Nothing to watch.</summary>
internal readonly struct NoEvents : IOdeEvents
{
    /// <inheritdoc/>
    public int Count => 0;

    /// <inheritdoc/>
    public OdeEventRule Rule(int index) => throw new ArgumentOutOfRangeException(nameof(index), "there are no events to ask for.");

    /// <inheritdoc/>
    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) =>
        throw new ArgumentOutOfRangeException(nameof(index), "there are no events to ask for.");

    /// <inheritdoc/>
    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
