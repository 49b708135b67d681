using NotebookKit.Filling.Fills;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.ByHand;

/// <summary>What a hand waits for: a pressure that the gauge comes up to, Pa absolute, or a temperature that the gas comes down to, K; 0
/// where it waits for neither.</summary>
internal readonly record struct HandWait(double RisesToPa, double CoolsToK);

/// <summary>When a hand at the valve has what it waits for, or the supply has nothing more to push with.</summary>
internal readonly struct HandEvents(FillSystem system, HandWait wait) : IOdeEvents
{
    public const int Come = 0, Stalled = 1;

    public int Count => wait.RisesToPa > 0 ? 2 : wait.CoolsToK > 0 ? 1 : 0;

    public OdeEventRule Rule(int index) => new(index == Come && wait.RisesToPa > 0 ? OdeEventDirection.Rising
        : OdeEventDirection.Falling, true);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) =>
        index == Stalled ? system.HeadroomPa(t, y) - FillEvents.StallPa : wait.RisesToPa > 0 ? system.Gas(y).Pascals - wait.RisesToPa
            : y[FillSystem.Kelvins] - wait.CoolsToK;

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
