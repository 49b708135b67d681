using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>No jet. Unknowns: height [m], speed [m/s].</summary>
internal struct CoastPhase<TMount>(TMount mount, double massKg) : IOdeSystem
    where TMount : struct, IMount
{
    public int Dimension => 2;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        mount.Surroundings(y[0], y[1], false, out var drag);
        dydt[0] = y[1];
        dydt[1] = -drag / massKg - mount.Gravity;
    }
}
