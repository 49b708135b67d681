using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>A corner of a body of revolution, seen from the side.</summary>
/// <param name="Station">Distance aft of the nose tip; 0 or above.</param>
/// <param name="Radius">Distance from the axis; 0 or above.</param>
public readonly record struct OutlinePoint(Length Station, Length Radius);
