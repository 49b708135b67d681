using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Nests;

/// <summary>Pieces laid on sheets. Source: see <see cref="Model"/>.</summary>
public sealed record NestResult : Result
{
    internal NestResult(SheetNest nest, IReadOnlyList<NestPlacement> placements, int sheets, Length used)
    {
        (Nest, Placements, Sheets, UsedOfLast) = (nest, placements, sheets, used);
        Area Sum() => Area.FromSquareMeters(nest.Pieces.Sum(p => p.Count * p.Area.SquareMeters));
        var strip = ((sheets - 1) * nest.SheetLength.Meters + used.Meters) * nest.SheetWidth.Meters;
        PieceArea = Sum().ToUnit(UnitsNet.Units.AreaUnit.SquareCentimeter);
        Yield = Ratio.FromPercent(100 * PieceArea.SquareMeters / strip);
    }

    /// <summary>What was asked.</summary>
    public SheetNest Nest { get; }

    /// <summary>Every piece where it is cut.</summary>
    public IReadOnlyList<NestPlacement> Placements { get; }

    /// <summary>Sheets it takes; 1 and more.</summary>
    public int Sheets { get; }

    /// <summary>Length used of the last sheet; the rest of it stays whole.</summary>
    public Length UsedOfLast { get; }

    /// <summary>Area of all pieces.</summary>
    public Area PieceArea { get; }

    /// <summary>Area of the pieces over that of the strip they are cut from.</summary>
    public Ratio Yield { get; }

    /// <inheritdoc/>
    public override string Title =>
        $"{Nest.Pieces.Sum(p => p.Count)} pieces on sheets of {Nest.SheetLength.Show()} × {Nest.SheetWidth.Show()}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Pieces set one by one on no-fit polygons",
        [
            "Each piece goes where the used strip grows least; several orders are tried and the best is kept.",
            "A good layout, not provably the best; half of the gap is kept round every piece, the whole of it to the edges and "
                + "between pieces.",
        ],
        "Straight-sided outlines up to 200 corners, up to 200 pieces.",
        [BuildingSources.Nesting]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Sheets", Digits.Round(Sheets), $"{UsedOfLast.ToUnit(UnitsNet.Units.LengthUnit.Millimeter).Show()} used of the last one's "
            + $"{Nest.SheetLength.Show()}"),
        new("Yield", Yield.Show(2), "of the strip that is cut; the rest is offcuts"),
        .. Nest.Pieces.Select(p => new ResultLine(p.Name, $"{p.Count} × {p.Area.Show()}", Where(p))),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Sheets > 1
        ? [BuildingFindings.PiecesTakeSeveralSheets(Sheets)]
        : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override Working Working => new("Yield",
    [
        new("Yield", @"\eta = \frac{\sum A_i}{L\,W}",
            $"{PieceArea.Show(4)} / ({Digits.Round((Sheets - 1) * Nest.SheetLength.Millimeters + UsedOfLast.Millimeters, 4)} mm × "
                + $"{Nest.SheetWidth.Show(4)})", Yield.Show(3), BuildingSources.Geometry),
    ]);

    private string Where(SheetPiece piece)
    {
        var turned = Placements.Count(p => p.Piece == piece && p.QuarterTurns != 0);
        return turned == 0 ? "all as drawn" : $"{turned} of them turned";
    }
}

/// <summary>One piece where it is cut.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Sheet">Sheet it is cut from; counted from 1.</param>
/// <param name="QuarterTurns">Quarter turns from as drawn; 0 to 3.</param>
/// <param name="Outline">Its corners on the sheet.</param>
public sealed record NestPlacement(SheetPiece Piece, int Sheet, int QuarterTurns, IReadOnlyList<SheetPoint> Outline);
