using UnitsNet;

namespace NotebookKit.Building;

/// <summary>A point on a stock sheet or of a piece's outline.</summary>
/// <param name="Along">Distance along the sheet's length, its grain; any finite value.</param>
/// <param name="Across">Distance across it; any finite value.</param>
public readonly record struct SheetPoint(Length Along, Length Across);
