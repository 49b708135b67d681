using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>A named place along the axis.</summary>
/// <param name="Label">What is there: "filled", "empty", "bulkhead".</param>
/// <param name="Station">Distance aft of the nose tip; 0 or above.</param>
public sealed record StationMark(string Label, Length Station);
