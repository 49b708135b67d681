namespace NotebookKit.Building;

/// <summary>One piece where it is cut.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Sheet">Sheet it is cut from; counted from 1.</param>
/// <param name="QuarterTurns">Quarter turns from as drawn; 0 to 3.</param>
/// <param name="Outline">Its corners on the sheet.</param>
public sealed record NestPlacement(SheetPiece Piece, int Sheet, int QuarterTurns, IReadOnlyList<SheetPoint> Outline);
