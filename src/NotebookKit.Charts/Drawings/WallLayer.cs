using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>One layer of a vessel's wall.</summary>
/// <param name="Name">What it is: "PET liner", "carbon sleeve ±46°".</param>
/// <param name="Kind">What it does, which chooses its hatching.</param>
/// <param name="Thickness">Its thickness; above 0.</param>
public sealed record WallLayer(string Name, WallLayerKind Kind, Length Thickness);
