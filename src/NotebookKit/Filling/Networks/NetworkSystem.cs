using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Networks;

/// <summary>A network's rates for the integrator.</summary>
internal readonly struct NetworkSystem(NetworkModel model) : IStiffSystem
{
    public int Dimension => model.Unknowns;

    public ReadOnlySpan<int> Coupled => model.Coupled;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt) => model.Derivatives(y, dydt);
}
