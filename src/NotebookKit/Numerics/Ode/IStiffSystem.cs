namespace NotebookKit.Numerics.Ode;

/// <summary>A stiff system: one that also says which unknowns its rates depend on.</summary>
internal interface IStiffSystem : IOdeSystem
{
    /// <summary>Unknowns that any rate depends on, in rising order. The others are sums of what passes, or stand still.</summary>
    ReadOnlySpan<int> Coupled { get; }
}
