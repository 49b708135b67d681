namespace NotebookKit.Charts.Results;

/// <summary>The edge of a field as corners east and north of the pad [m]; a circle becomes a polygon of many.</summary>
internal static class FieldOutline
{
    private const int Corners = 96;

    public static IReadOnlyList<(double East, double North)> Of(FlyingField field)
    {
        if (field.Radius is not { } radius) return [.. field.Corners.Select(c => (c.East.Meters, c.North.Meters))];
        return [.. Enumerable.Range(0, Corners).Select(i => Math.SinCos(2 * Math.PI * i / Corners)).Select(d => (radius.Meters * d.Sin,
            radius.Meters * d.Cos))];
    }
}
