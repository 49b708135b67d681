using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Static margin against water left, or against time, with the minimum margin that is accepted.</summary>
public static class MarginChart
{
    /// <summary>Draws the margin.</summary>
    /// <param name="x">Water left, or time.</param>
    /// <param name="margin">Static margin, in "calibres".</param>
    /// <param name="least">Minimum margin accepted [calibres]; above 0.</param>
    /// <param name="events">Moments to mark: "water out".</param>
    /// <exception cref="InvalidDesignException">Columns of different length or without values, or a minimum margin that isn't above
    /// zero.</exception>
    public static EngineeringChart Draw(Series x, Series margin, double least, params IReadOnlyList<EventLine> events)
    {
        ArgumentNullException.ThrowIfNull(margin);
        ArgumentNullException.ThrowIfNull(events);
        if (least is not > 0)
            throw new InvalidDesignException("Margin chart",
                [Finding.Error($"Minimum margin is {Digits.Round(least)} calibres; it must be above 0 calibres, else the vehicle "
                + "isn't stable.")]);
        var lowest = margin.Values.Where(double.IsFinite).DefaultIfEmpty(0).Min();
        return new EngineeringChart("Static margin", Axis.For(x), Axis.For(margin))
        {
            Marks = [new Curve(x, margin)],
            Events = events,
            Limits = [new LimitLine(least,
                $"required minimum {Digits.Round(least, 2)} {(least == 1 ? margin.Unit.TrimEnd('s') : margin.Unit)}")],
            Spans = [new ShadedSpan(Math.Min(0, lowest), least, "") { Across = true, Forbidden = true }],
        }.Checked();
    }
}
