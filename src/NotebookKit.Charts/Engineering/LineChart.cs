using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Several columns against one: the plain chart for whatever has no named one.</summary>
public static class LineChart
{
    /// <summary>Draws the columns; lines of different names are read on an axis named after the chart.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Horizontal values.</param>
    /// <param name="lines">Vertical columns of one unit, one a line.</param>
    /// <exception cref="InvalidDesignException">No line, units that differ, or columns of different length.</exception>
    public static EngineeringChart Draw(string title, Series x, params IReadOnlyList<Series> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (lines.Count == 0) throw new InvalidDesignException($"Chart '{title}'",
            [Finding.Error("There is no line to draw; give at least one column.")]);
        var name = lines.All(l => l.Name == lines[0].Name) ? lines[0].Name : title;
        return Draw(title, x, new Axis(name, lines[0].Unit), lines);
    }

    /// <summary>Draws the columns against an axis with a name of its own.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Horizontal values.</param>
    /// <param name="y">Vertical axis.</param>
    /// <param name="lines">Vertical columns in the unit of the axis, one a line.</param>
    /// <exception cref="InvalidDesignException">No line, units that differ, or columns of different length.</exception>
    public static EngineeringChart Draw(string title, Series x, Axis y, params IReadOnlyList<Series> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return new EngineeringChart(title, Axis.For(x), y) { Marks = [.. lines.Select(line => new Curve(x, line))] }.Checked();
    }
}
