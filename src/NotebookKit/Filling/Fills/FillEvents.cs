using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Fills;

/// <summary>When a fill is over: the wanted pressure is there, the vessel's rating is passed on the way to it, or the supply has nothing
/// more to push with.</summary>
internal struct FillEvents(FillSystem system, double goalPa, bool settled, double ratedPa) : IOdeEvents
{
    public const int Goal = 0, Rating = 1, Stalled = 2;

    /// <summary>Pressure difference at which a fill counts as stalled, Pa: the last of it would take for ever.</summary>
    public const double StallPa = 10;

    public readonly int Count => 3;

    public readonly OdeEventRule Rule(int index) => new(index == Stalled ? OdeEventDirection.Falling : OdeEventDirection.Rising, true);

    public readonly double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => index switch
    {
        Goal => (settled ? system.SettledPa(y) : system.Gas(y).Pascals) - goalPa,
        // A pascal above the rating, so that a fill to the rating itself ends by its goal.
        Rating => system.Gas(y).Pascals - ratedPa - 1,
        _ => system.HeadroomPa(t, y) - StallPa,
    };

    public readonly void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
