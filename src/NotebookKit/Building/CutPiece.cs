using UnitsNet;

namespace NotebookKit.Building;

/// <summary>Pieces of one size to cut for one ply.</summary>
/// <param name="Ply">Ply it is for.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Count">How many; 1 and more.</param>
/// <param name="Along">Size along the vessel, or the length of a sleeve or tape as it lies on the bench.</param>
/// <param name="Around">Size around the vessel; none for a sleeve or a tape.</param>
/// <param name="OffTheRoll">Length of the roll it takes.</param>
/// <param name="Note">What to mind.</param>
public sealed record CutPiece(string Ply, string Material, int Count, Length Along, Length? Around, Length OffTheRoll, string Note);
