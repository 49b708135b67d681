using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Several columns against one: the plain chart for whatever has no named one.</summary>
public static class LineChart
{
    /// <summary>Draws the columns. All on the left axis must share its unit.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Horizontal values.</param>
    /// <param name="lines">Vertical columns, one a line.</param>
    /// <exception cref="InvalidDesignException">No line, units that differ, or columns of different length.</exception>
    public static EngineeringChart Draw(string title, Series x, params IReadOnlyList<Series> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (lines.Count == 0) throw new InvalidDesignException($"Chart '{title}'", [Finding.Error("There is no line to draw; give at least one column.")]);
        return new EngineeringChart(title, Axis.For(x), Axis.For(lines[0])) { Marks = [.. lines.Select(y => new Curve(x, y))] }.Checked();
    }
}
