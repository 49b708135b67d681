using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Who watches each phase.</summary>
internal struct FiringObservers<TObserver>
    where TObserver : struct, IOdeObserver
{
    public TObserver Tube, Start, Water, Air;
}
