using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Nests;

/// <summary>Pieces to be laid on stock sheets so that little is left over.</summary>
/// <remarks>
/// Pieces are set one by one, each where it makes the strip used shortest, on the edges of the no-fit polygons of those set before; several
/// orders are tried and the best kept. It finds good layouts, not provably best ones. Source: J. A. Bennell, J. F. Oliveira, The geometry
/// of nesting problems: a tutorial, Eur. J. Oper. Res. 184 (2008) 397 (bottom-left placement).
/// </remarks>
/// <param name="SheetLength">Length of a sheet, along its grain; 10 mm to 10 m.</param>
/// <param name="SheetWidth">Width of a sheet; 10 mm to 10 m.</param>
/// <param name="Pieces">What is cut from it.</param>
public sealed record SheetNest(Length SheetLength, Length SheetWidth, IReadOnlyList<SheetPiece> Pieces)
{
    /// <summary>Room for the saw between pieces and to the edges; 0 to 50 mm, 3 mm unless given (common practice).</summary>
    public Length Gap { get; init; } = 3.Millimetres();

    /// <summary>How pieces may be turned.</summary>
    public SheetTurns Turns { get; init; }

    /// <summary>Orders tried; 1 to 500.</summary>
    public int Tries { get; init; } = 12;

    /// <summary>Seed of the shuffled orders; any.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var side = new ValidRange<Length>(10.Millimetres(), 10.Metres());
        List<Finding?> findings =
        [
            side.Find(SheetLength, "length of the sheet", "Check its unit."),
                side.Find(SheetWidth, "width of the sheet", "Check its unit."),
            new ValidRange<Length>(Length.Zero, 50.Millimetres()).Find(Gap, "gap between pieces", "A saw takes 1 to 3 mm."),
            new ValidRange<double>(1, 500).Find(Tries, "orders tried", "A dozen is enough for fins."),
            Enum.IsDefined(Turns) ? null : BuildingFindings.TurnsUnknown(Turns.ToString(), Enum.GetNames<SheetTurns>()),
            Pieces.Count == 0 ? BuildingFindings.NoPieceToLay() : null,
            Pieces.Sum(p => (long)p.Count) is > 200 and var many
                ? BuildingFindings.TooManyPieces((int)Math.Min(many, int.MaxValue)) : null,
            .. Pieces.SelectMany(p => p.Validate()),
        ];
        return [.. findings.OfType<Finding>()];
    }

    /// <summary>Lays the pieces. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is out of range, or a piece is larger than the sheet; all reasons are in
    /// it.</exception>
    public NestResult Place()
    {
        InvalidDesignException.ThrowIfAny("Pieces on a sheet", Validate());
        return new NestModel(this).Best();
    }
}

/// <summary>How a piece may be turned on the sheet; a laminate's strength goes with its direction.</summary>
public enum SheetTurns
{
    /// <summary>As drawn or end for end: the plies keep their direction.</summary>
    EndForEnd,

    /// <summary>As drawn only.</summary>
    AsDrawn,

    /// <summary>By quarter turns: for sheets that are the same both ways.</summary>
    Quarter,
}
