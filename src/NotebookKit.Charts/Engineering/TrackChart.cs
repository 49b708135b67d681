using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>A flight seen from above, one metre as long in each direction.</summary>
public static class TrackChart
{
    /// <summary>Draws the track from the pad to the landing.</summary>
    /// <param name="east">Distance east of the pad.</param>
    /// <param name="north">Distance north of the pad.</param>
    /// <exception cref="InvalidDesignException">Columns of different length or unit.</exception>
    public static EngineeringChart Draw(Series east, Series north)
    {
        var chart = new EngineeringChart("Flight seen from above", Axis.For(east),
            Axis.For(north)) { Marks = [new Curve(east, north) { Name = "track" }], EqualScale = true }.Checked();
        return chart.With(
            new Points(east with { Values = [east[0]] }, north with { Values = [north[0]] }) { Name = "pad", Shape = PointShape.Square,
                Slot = 7, Size = 11 },
            new Points(east with { Values = [east[^1]] }, north with { Values = [north[^1]] }) { Name = "landing",
                Shape = PointShape.Triangle, Slot = 1, Size = 12 });
    }
}
