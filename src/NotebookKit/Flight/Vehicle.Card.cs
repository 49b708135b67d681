using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight;

public sealed partial record Vehicle
{
    /// <summary>The page for the safety officer. Source: the flights it is made from, in three degrees of freedom.</summary>
    /// <param name="site">Where it starts.</param>
    /// <param name="notes">Proof, stand-off, and what else was added by hand.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="InvalidOperationException">The flight has no answer; there is nothing to put on a card.</exception>
    public FlightCard Card(LaunchSite site, CardNotes notes)
    {
        ArgumentNullException.ThrowIfNull(notes);
        var flight = Fly(site);
        var figures = flight.Figures;
        var (lowest, highest) = MeasuredDrag is null
            ? ((this with { DragEnd = DragEnd.High }).Fly(site).Apogee, (this with { DragEnd = DragEnd.Low }).Fly(site).Apogee)
            : (figures.Apogee, figures.Apogee);
        var exit = 0;
        while (flight.Time[exit] < figures.RailExitTime.Seconds && exit < flight.Time.Count - 1) exit++;
        var rail = Airframe.LeaveRail(figures.RailExitSpeed, figures.RailWind, flight.Water[exit].Kilograms(), flight.Gas[exit].Kilograms());
        var quarter = figures.RailExitSpeed / RailExitResult.WantedRatio;
        return new(this, site, notes, flight, lowest, highest, rail.WindLimit < quarter ? rail.WindLimit : quarter, flight.Stability());
    }
}
