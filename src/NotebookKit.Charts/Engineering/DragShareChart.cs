using System.Globalization;
using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Drag by part at several speeds, stacked, so that the whole bar is the whole drag.</summary>
public static class DragShareChart
{
    /// <summary>Draws the stacked bars.</summary>
    /// <param name="speed">Speeds, a bar each.</param>
    /// <param name="parts">Drag (or drag coefficient) of each part at those speeds; one unit for all.</param>
    /// <exception cref="InvalidDesignException">No part, columns of different length, or units that differ.</exception>
    public static EngineeringChart Draw(Series speed, params IReadOnlyList<Series> parts)
    {
        ArgumentNullException.ThrowIfNull(speed);
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0) throw new InvalidDesignException("Chart 'Drag by part'",
            [Finding.Error("There is no part to draw; give at least one column.")]);
        string[] names = [.. speed.Values.Select(v => v.ToString("G4", CultureInfo.InvariantCulture))];
        var what = parts[0].Unit == "-" ? "Drag coefficient" : "Drag";
        return new EngineeringChart("Drag by part", Axis.OfNames(speed.Name, speed.Unit), new Axis(what, parts[0].Unit))
        {
            Marks = [.. parts.Select(p => new Bars(names, p))],
            Stacked = true,
        }.Checked();
    }
}
