using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// The first tenths of a millisecond: the water column gathers speed. Unknowns: height [m], speed [m/s], gas volume [m³], jet speed [m/s];
/// then the mass budget of the water phase.
/// </summary>
internal struct StartPhase<TMount>(WaterPhase<TMount> water, double jetAreaM2, bool withLedger) : IOdeSystem
    where TMount : struct, IMount
{
    public const int Core = 4;

    /// <summary>Time constants after which the jet counts as established: u/u∞ = tanh 15 is 1 to 2e-13.</summary>
    public const double TimeConstants = 15;

    public int Dimension => withLedger ? Core + WaterPhase<TMount>.Budget : Core;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var held = water.Mount.IsHeld;
        dydt[3] = water.Starting(y[0], y[1], y[2], y[3], out var now);
        dydt[0] = held ? 0 : y[1];
        dydt[1] = held ? 0 : (now.Thrust - now.Drag) / now.Mass - water.Mount.Gravity;
        dydt[2] = jetAreaM2 * y[3];
        if (dydt.Length == Core) return;
        water.Book(dydt[Core..], now, y[1], dydt[2]);
    }
}
