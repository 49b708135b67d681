using NotebookKit.Charts.Engineering;
using NotebookKit.Flight;

namespace NotebookKit.Charts.Results;

/// <summary>Outline of a flying field, east and north of the pad [m].</summary>
internal static class FieldEdge
{
    public static IReadOnlyList<(double East, double North)> Corners(FlyingField field)
    {
        if (field.Radius is not { } radius) return [.. field.Corners.Select(c => (c.East.Meters, c.North.Meters))];
        var (east, north) = new ScatterEllipse("", 0, 0, radius.Meters, radius.Meters, 0).Outline();
        return [.. east.Zip(north)];
    }
}
