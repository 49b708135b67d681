using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>A flight in space with its shadow on the ground.</summary>
public static class FlightPathChart
{
    /// <summary>Draws the path. The box isn't to scale; the axes are.</summary>
    /// <param name="east">Distance east of the pad.</param>
    /// <param name="north">Distance north of the pad.</param>
    /// <param name="height">Height above the pad.</param>
    /// <exception cref="InvalidDesignException">Columns of different length or unit.</exception>
    public static EngineeringChart Draw(Series east, Series north, Series height)
    {
        ArgumentNullException.ThrowIfNull(height);
        return new EngineeringChart("Flight path", Axis.For(east), Axis.For(north))
        {
            Up = Axis.For(height),
            Marks =
            [
                new Path3D(east, north, height) { Name = "path" },
                new Path3D(east, north, height with { Values = [.. height.Values.Select(_ => 0.0)] }) { Name = "shadow on the ground",
                    Reference = true, Slot = 7 },
            ],
        }.Checked();
    }
}
