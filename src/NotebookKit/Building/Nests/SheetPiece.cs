using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Building.Nests;

/// <summary>A flat piece to be cut from sheet.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Outline">Its corners in order, 3 to 200; straight sides that don't cross.</param>
/// <param name="Count">How many are wanted; 1 to 100.</param>
public sealed record SheetPiece(string Name, IReadOnlyList<SheetPoint> Outline, int Count = 1)
{
    /// <summary>Area of one. Source: geometry (shoelace formula).</summary>
    public Area Area => Area.FromSquareMeters(Math.Abs(TwiceAreaM2) / 2).ToUnit(UnitsNet.Units.AreaUnit.SquareCentimeter);

    private double TwiceAreaM2
    {
        get
        {
            double sum = 0;
            for (var i = 0; i < Outline.Count; i++)
            {
                var (a, b) = (Outline[i], Outline[(i + 1) % Outline.Count]);
                sum += a.Along.Meters * b.Across.Meters - b.Along.Meters * a.Across.Meters;
            }

            return sum;
        }
    }

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [];
        if (Count is < 1 or > 100) findings.Add(BuildingFindings.PieceCountOutOfRange(Name, Count));
        if (Outline.Count is < 3 or > 200)
            findings.Add(BuildingFindings.OutlineCornerCountOutOfRange(Name, Outline.Count));
        else if (Outline.Any(p => !double.IsFinite(p.Along.Meters) || !double.IsFinite(p.Across.Meters)))
            findings.Add(BuildingFindings.OutlineCornerIsNotNumber(Name));
        else if (!NoFit.IsSimple(NoFit.PolygonOf(Outline)))
            findings.Add(BuildingFindings.OutlineCrossesItselfOrHasNoArea(Name));
        else if (Area < Area.FromSquareCentimeters(0.01))
            findings.Add(BuildingFindings.PieceAreaTooSmall(Name, Area));
        return findings;
    }
}

/// <summary>A point on a stock sheet or of a piece's outline.</summary>
/// <param name="Along">Distance along the sheet's length, its grain; any finite value.</param>
/// <param name="Across">Distance across it; any finite value.</param>
public readonly record struct SheetPoint(Length Along, Length Across);
