using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>All that a side view of a vehicle needs: plain lengths, no vehicle type.</summary>
/// <param name="Title">Name of the vehicle.</param>
/// <param name="Outline">Outside of the body from nose tip to tail, stations never falling; at least two points.</param>
public sealed record DrawingModel(string Title, IReadOnlyList<OutlinePoint> Outline)
{
    /// <summary>Sets of fins; may be empty.</summary>
    public IReadOnlyList<FinOutline> Fins { get; init; } = [];

    /// <summary>Inside of the pressure vessel from its forward to its aft end; empty draws none.</summary>
    public IReadOnlyList<OutlinePoint> Vessel { get; init; } = [];

    /// <summary>Station of the water's surface as the vehicle stands on the pad, water aft of it; none draws no water.</summary>
    public Length? WaterLevel { get; init; }

    /// <summary>Centres of gravity, each with the state it belongs to.</summary>
    public IReadOnlyList<StationMark> CentresOfGravity { get; init; } = [];

    /// <summary>Centre of pressure; none draws none.</summary>
    public Length? CentreOfPressure { get; init; }

    /// <summary>Parts to be named above the body.</summary>
    public IReadOnlyList<StationMark> Labels { get; init; } = [];

    /// <summary>Overall length.</summary>
    public Length Length => Outline[^1].Station - Outline[0].Station;

    /// <summary>Greatest diameter of the body.</summary>
    public Length Diameter => Length.FromMeters(2 * Outline.Max(p => p.Radius.Meters));

    /// <summary>All that is wrong with the model.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [];
        if (Outline.Count < 2) return [Finding.Error($"The outline of '{Title}' has {Outline.Count} points; a body needs at least 2, "
            + "nose tip first.")];
        Rising(Outline, "outline", findings);
        if (Vessel.Count > 0) Rising(Vessel, "vessel", findings);
        if (Vessel.Count == 1) findings.Add(Finding.Error("The vessel has one point; its inside needs at least 2, forward end first."));
        if (Length.Meters <= 0 || Diameter.Meters <= 0) findings.Add(Finding.Error($"'{Title}' is {Length.Show()} long and "
            + $"{Diameter.Show()} across; both must be above 0."));
        var (nose, tail) = (Outline[0].Station, Outline[^1].Station);
        foreach (var (what, station) in Places())
        {
            if (station < nose || station > tail)
                findings.Add(Finding.Error($"{what} is at {station.Show()}, off the body, which runs from {nose.Show()} to "
                    + $"{tail.Show()}; measure it from the nose tip."));
        }
        if (WaterLevel is not null && Vessel.Count < 2) findings.Add(Finding.Error("There is a water level and no vessel; give the "
            + "inside of the vessel."));
        foreach (var fin in Fins)
        {
            if (fin.Count is < 2 or > 8) findings.Add(Finding.Error($"There are {fin.Count} fins in a set; it must be 2 to 8."));
            if (fin.Corners.Count < 3) findings.Add(Finding.Error($"A fin has {fin.Corners.Count} corners; it needs at least 3."));
            if (fin.Thickness.Meters <= 0) findings.Add(Finding.Error($"A fin is {fin.Thickness.Show()} thick; it must be above 0."));
        }
        return findings;
    }

    private IEnumerable<(string What, Length Station)> Places() =>
        CentresOfGravity.Select(m => ($"Centre of gravity '{m.Label}'", m.Station))
            .Concat(Labels.Select(m => ($"Part '{m.Label}'", m.Station)))
            .Concat(Vessel.Select(p => ("A point of the vessel", p.Station)))
            .Concat(WaterLevel is { } level ? [("Water level", level)] : [])
            .Concat(CentreOfPressure is { } cp ? [("Centre of pressure", cp)] : []);

    private static void Rising(IReadOnlyList<OutlinePoint> points, string what, List<Finding> findings)
    {
        for (var i = 0; i < points.Count; i++)
        {
            if (!double.IsFinite(points[i].Station.Meters) || !double.IsFinite(points[i].Radius.Meters) || points[i].Radius.Meters < 0)
                findings.Add(Finding.Error($"Point {i + 1} of the {what} is at {points[i].Station.Show()}, radius "
                    + $"{points[i].Radius.Show()}; both must be finite and the radius 0 or above."));
            else if (i > 0 && points[i].Station < points[i - 1].Station)
                findings.Add(Finding.Error($"Point {i + 1} of the {what} is at {points[i].Station.Show()}, before "
                    + $"{points[i - 1].Station.Show()}; go from nose to tail."));
        }
    }
}

/// <summary>A set of equal fins.</summary>
/// <param name="Count">How many stand around the body; 2 to 8.</param>
/// <param name="Corners">Corners of one fin, root first, as station and distance from the axis.</param>
/// <param name="Thickness">Thickness of the sheet; above 0.</param>
public sealed record FinOutline(int Count, IReadOnlyList<OutlinePoint> Corners, UnitsNet.Length Thickness);

/// <summary>A corner of a body of revolution, seen from the side.</summary>
/// <param name="Station">Distance aft of the nose tip; 0 or above.</param>
/// <param name="Radius">Distance from the axis; 0 or above.</param>
public readonly record struct OutlinePoint(Length Station, Length Radius);

/// <summary>A named place along the axis.</summary>
/// <param name="Label">What is there: "filled", "empty", "bulkhead".</param>
/// <param name="Station">Distance aft of the nose tip; 0 or above.</param>
public sealed record StationMark(string Label, Length Station);
