using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Where the flights of a dispersion came down, with the ellipses that hold shares of them and the edge of the field.</summary>
public static class LandingChart
{
    /// <summary>Draws the landings.</summary>
    /// <param name="east">Distance east of the pad, in "m".</param>
    /// <param name="north">Distance north of the pad, in "m".</param>
    /// <param name="ellipses">Ellipses to draw.</param>
    /// <param name="field">Corners of the field, east and north of the pad [m]; empty draws none.</param>
    /// <exception cref="InvalidDesignException">Columns of different length, or not in metres.</exception>
    public static EngineeringChart Draw(Series east, Series north, IReadOnlyList<ScatterEllipse> ellipses,
        IReadOnlyList<(double East, double North)>? field = null)
    {
        ArgumentNullException.ThrowIfNull(east);
        ArgumentNullException.ThrowIfNull(north);
        ArgumentNullException.ThrowIfNull(ellipses);
        if (east.Unit != "m" || north.Unit != "m")
            throw new InvalidDesignException("Landing scatter",
                [Finding.Error($"Landings are in {east.Unit} and {north.Unit}; ellipses and field are in m, so bring them to m.")]);
        List<Mark> marks = [new Points(east, north) { Name = "landings", Size = east.Count > 500 ? 2.5 : 5, Slot = 5 }];
        foreach (var (ellipse, i) in ellipses.Select((e, i) => (e, i)))
        {
            var (x, y) = ellipse.Outline();
            marks.Add(new Curve(east with { Values = x }, north with { Values = y }) { Name = $"{ellipse.Label} of landings",
                Slot = i == 0 ? 0 : i == 1 ? 3 : 1 });
        }
        if (field is { Count: > 2 })
        {
            marks.Add(new Curve(east with { Values = [.. field.Select(c => c.East), field[0].East] },
                north with { Values = [.. field.Select(c => c.North), field[0].North] })
            {
                Name = "edge of the field",
                Slot = 4,
                Stroke = Stroke.Solid,
            });
        }
        marks.Add(new Points(east with { Values = [0] }, north with { Values = [0] }) { Name = "pad", Shape = PointShape.Square, Slot = 7,
            Size = 11 });
        return new EngineeringChart("Landing points", Axis.For(east), Axis.For(north)) { Marks = marks, EqualScale = true,
            Remark = $"{WholeNumber.Show(east.Count)} flights" }.Checked();
    }
}
