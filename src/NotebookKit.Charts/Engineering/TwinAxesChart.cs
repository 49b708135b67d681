using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Two columns of different units against a third, one read at the left and one at the right.</summary>
public static class TwinAxesChart
{
    /// <summary>Draws both curves; the legend says which is read where.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Horizontal values.</param>
    /// <param name="left">Column read at the left.</param>
    /// <param name="right">Column read at the right.</param>
    /// <param name="events">Moments to mark.</param>
    /// <exception cref="InvalidDesignException">Columns of different length or without values.</exception>
    public static EngineeringChart Draw(string title, Series x, Series left, Series right, params IReadOnlyList<EventLine> events)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        ArgumentNullException.ThrowIfNull(events);
        return new EngineeringChart(title, Axis.For(x), Axis.For(left))
        {
            Right = Axis.For(right),
            Marks = [new Curve(x, left) { Name = $"{left.Name} (left)" },
                new Curve(x, right) { Name = $"{right.Name} (right)", OnRight = true }],
            Events = events,
        }.Checked();
    }
}
