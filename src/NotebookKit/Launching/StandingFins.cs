using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>A set of equal fins of a vehicle that stands in the wind.</summary>
/// <remarks>
/// Every fin counts as a plate that nothing shelters: the wind sees the sum over all fins of area times |sin| of the angle between fin and
/// wind, at the direction where that sum is the largest. Source: geometry; drag of a square plate 1.17, C. Matthews, Aeronautical
/// Engineer's Data Book, 2002, fig. 5.13. To leave out that fins shelter each other errs high.
/// </remarks>
/// <param name="Count">How many, evenly about the body; 1 to 12.</param>
/// <param name="Area">Area of one side of one fin; 1 cm² to 4 m².</param>
/// <param name="Centre">Height of the middle of the fins over the ground; 0 to 20 m.</param>
public sealed record StandingFins(int Count, Area Area, Length Centre)
{
    /// <summary>Drag coefficient on the area that the wind sees [-]; 0.5 to 2, 1.17 unless given: a fin over five times as wide as high has
    /// more, up to 1.98.</summary>
    public double DragCoefficient { get; init; } = 1.17;

    /// <summary>Area that the wind sees at the most. Source: geometry, the largest sum of |sin| over fins evenly about the body.</summary>
    public Area Seen => Area * (Count <= 2 ? Count : Count % 2 == 0 ? 2 / Math.Sin(Math.PI / Count) : 1 / Math.Sin(Math.PI / (2 * Count)));

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<int>(1, 12).Find(Count, "number of fins", "Three or four are usual."),
            new ValidRange<Area>(UnitsNet.Area.FromSquareCentimeters(1), UnitsNet.Area.FromSquareCentimeters(40_000)).Find(
                Area.ToUnit(UnitsNet.Units.AreaUnit.SquareCentimeter), "area of a fin", "It is one side of one fin."),
            new ValidRange<Length>(Length.Zero, 20.Metres()).Find(Centre, "height of the fins", "It is counted from the ground."),
            new ValidRange<double>(0.5, 2).Find(DragCoefficient, "drag coefficient of the fins",
                "A plate across the wind has 1.17 to 1.98."),
        }.OfType<Finding>().ToList();
}
