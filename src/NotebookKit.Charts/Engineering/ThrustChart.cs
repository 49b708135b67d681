using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Thrust against time, the area under it being the impulse, with the moments that part water from air.</summary>
public static class ThrustChart
{
    /// <summary>Draws the curve.</summary>
    /// <param name="time">Time since release.</param>
    /// <param name="thrust">Thrust.</param>
    /// <param name="events">Moments to mark: "water out", "unchoked".</param>
    /// <exception cref="InvalidDesignException">Columns of different length or without values.</exception>
    public static EngineeringChart Draw(Series time, Series thrust, params IReadOnlyList<EventLine> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        return new EngineeringChart("Thrust", Axis.For(time), Axis.For(thrust))
        {
            Marks = [new Curve(time, thrust) { Filled = true }],
            Events = events,
        }.Checked();
    }
}
