using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>A value over two variables: apogee over water fraction and nozzle bore.</summary>
public static class ContourChart
{
    /// <summary>Draws the map and marks its highest point.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Values of the horizontal variable, rising.</param>
    /// <param name="y">Values of the vertical variable, rising.</param>
    /// <param name="z">The value at each pair, row by row: all x at the first y, then all x at the second. Not a number leaves a
    /// blank.</param>
    /// <exception cref="InvalidDesignException">Counts that don't match, values that don't rise, or nothing finite.</exception>
    public static EngineeringChart Draw(string title, Series x, Series y, Series z)
    {
        var chart = new EngineeringChart(title, Axis.For(x), Axis.For(y)) { Marks = [new Field(x, y, z)] }.Checked();
        var best = Enumerable.Range(0, z.Count).Where(i => double.IsFinite(z[i])).MaxBy(i => z[i]);
        return chart.With(new Callout(x[best % x.Count], y[best / x.Count], $"highest on this grid: {Digits.Round(z[best])} {z.Unit}"));
    }
}
