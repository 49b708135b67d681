namespace NotebookKit.Charts.Drawings;

/// <summary>A set of equal fins.</summary>
/// <param name="Count">How many stand around the body; 2 to 8.</param>
/// <param name="Corners">Corners of one fin, root first, as station and distance from the axis.</param>
/// <param name="Thickness">Thickness of the sheet; above 0.</param>
public sealed record FinOutline(int Count, IReadOnlyList<OutlinePoint> Corners, UnitsNet.Length Thickness);
