using NotebookKit.Numerics.Space;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>The rail that guides a vehicle until it is fast enough for its fins.</summary>
/// <param name="Guided">Way that the vehicle is guided over, until its last button or shoe leaves; 0.05 to 20 m.</param>
public sealed record Rail(Length Guided)
{
    /// <summary>Angle above the horizon; 45 to 90°, upright unless given.</summary>
    public Angle Elevation { get; init; } = 90.Degrees();

    /// <summary>Where it leans to, clockwise from north; −360 to 360°.</summary>
    public Angle Towards { get; init; } = Angle.Zero;

    /// <summary>Coefficient of friction [-]; 0 to 1. 0.2 unless given: plastic on aluminium, common practice. An upright rail in calm air
    /// has none.</summary>
    public double Friction { get; init; } = 0.2;

    /// <summary>Everything that is wrong with the rail.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] findings =
        [
            new ValidRange<Length>(0.05.Metres(), 20.Metres()).Find(Guided, "guided length of the rail",
                "Measure until the last button leaves."),
            new ValidRange<Angle>(45.Degrees(), 90.Degrees()).Find(Elevation, "elevation of the rail",
                "It is counted from the horizon; range rules want 60° or more."),
            new ValidRange<Angle>((-360).Degrees(), 360.Degrees()).Find(Towards, "direction of the rail", "Clockwise from north."),
            new ValidRange<double>(0, 1).Find(Friction, "friction of the rail", "Plastic on aluminium has 0.1 to 0.3."),
        ];
        return findings.OfType<Finding>().ToArray();
    }

    /// <summary>Where it points: north, east, down; with the angles turned by small ones to north and east [rad].</summary>
    internal Vector Direction(double tiltNorth = 0, double tiltEast = 0)
    {
        // Exactly upright has no horizontal part: the cosine of a rounded right angle would have one.
        var flat = Elevation.Degrees == 90 ? 0 : Math.Cos(Elevation.Radians);
        var up = Elevation.Degrees == 90 ? 1 : Math.Sin(Elevation.Radians);
        var direction = new Vector((flat * Math.Cos(Towards.Radians)) + tiltNorth, (flat * Math.Sin(Towards.Radians)) + tiltEast, -up);
        return 1 / direction.Length * direction;
    }
}
