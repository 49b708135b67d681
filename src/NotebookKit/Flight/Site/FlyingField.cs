using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>The ground that everything must land on, seen from the pad. Source: geometry.</summary>
public sealed record FlyingField
{
    private FlyingField(Length? radius, IReadOnlyList<FieldCorner> corners)
    {
        Radius = radius;
        Corners = corners;
    }

    /// <summary>Radius of a circle about the pad, where it is one.</summary>
    public Length? Radius { get; }

    /// <summary>Corners in order, where it is a polygon.</summary>
    public IReadOnlyList<FieldCorner> Corners { get; }

    /// <summary>A circle about the pad.</summary>
    /// <param name="radius">Its radius; 5 m to 20 km.</param>
    public static FlyingField Circle(Length radius) => new(radius, []);

    /// <summary>A polygon.</summary>
    /// <param name="corners">Its corners in order, either way round; 3 or more.</param>
    public static FlyingField Outline(params FieldCorner[] corners) => new(null, [.. corners]);

    /// <summary>Whether a place lies on the field.</summary>
    /// <param name="east">To the east of the pad; any value.</param>
    /// <param name="north">To the north of the pad; any value.</param>
    public bool Contains(Length east, Length north) => Contains(east.Meters, north.Meters);

    /// <summary>Everything that is wrong with the field.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Radius is { } radius)
        {
            if (new ValidRange<Length>(5.Metres(), 20_000.Metres()).Find(radius, "radius of the field", "It is counted from the pad.")
                is { } wrong) findings.Add(wrong);
        }
        else if (Corners.Count < 3)
        {
            findings.Add(FlightFindings.FieldHasTooFewCorners(Corners.Count));
        }
        else if (!Contains(0, 0))
        {
            findings.Add(FlightFindings.PadDoesNotLieOnField());
        }

        return findings;
    }

    internal bool Contains(double eastM, double northM)
    {
        if (Radius is { } radius) return Math.Sqrt((eastM * eastM) + (northM * northM)) <= radius.Meters;
        var inside = false;
        for (int i = 0, j = Corners.Count - 1; i < Corners.Count; j = i++)
        {
            var (xi, yi, xj, yj) = (Corners[i].East.Meters, Corners[i].North.Meters, Corners[j].East.Meters, Corners[j].North.Meters);
            if (yi > northM != yj > northM && eastM < ((xj - xi) * (northM - yi) / (yj - yi)) + xi) inside = !inside;
        }

        return inside;
    }
}

/// <summary>A corner of the flying field, seen from the pad.</summary>
/// <param name="East">To the east of the pad; any value.</param>
/// <param name="North">To the north of the pad; any value.</param>
public readonly record struct FieldCorner(Length East, Length North);
