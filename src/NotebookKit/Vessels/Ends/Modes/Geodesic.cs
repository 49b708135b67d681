using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>A yarn wound over a round body along the shortest way, which needs no friction to stay: r·sinα is constant.</summary>
/// <remarks>Source: Clairaut's relation.</remarks>
public static class Geodesic
{
    /// <summary>Angle between yarn and meridian at a radius, sinα = r0/r. Source: Clairaut's relation.</summary>
    /// <param name="turnRadius">Radius at which the yarn turns back, r0; 0 to the radius asked for.</param>
    /// <param name="radius">Radius asked for, r; 0.01 to 2000 mm.</param>
    /// <exception cref="OutOfRangeException">An input is out of range; the yarn doesn't reach a radius below the one at which it turns
    /// back.</exception>
    public static Angle AngleAt(Length turnRadius, Length radius)
    {
        var r = ModeInput.Size(radius, "radius", "Measure from the axis.");
        var turn = new ValidRange<Length>(0.Millimetres(), radius)
            .Check(turnRadius, "radius at which the yarn turns back", "The yarn doesn't reach further in than that.").Meters;
        return Angle.FromDegrees(Math.Asin(Math.Min(turn / r, 1)) * 180 / Math.PI);
    }

    /// <summary>Radius at which a yarn turns back that has an angle at a radius, r·sinα. Source: Clairaut's relation.</summary>
    /// <param name="radius">Radius, r; 0.01 to 2000 mm.</param>
    /// <param name="angle">Angle between yarn and meridian there, α; 0° to 90°.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Length TurnRadius(Length radius, Angle angle)
    {
        ModeInput.Size(radius, "radius", "Measure from the axis.");
        return radius * Math.Sin(new ValidRange<Angle>(0.Degrees(), 90.Degrees())
            .Check(angle, "angle of the yarn", "Measure it from the meridian.").Radians);
    }
}
