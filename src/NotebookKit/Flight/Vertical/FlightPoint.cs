using UnitsNet;

namespace NotebookKit.Flight.Vertical;

/// <summary>One moment of a flight.</summary>
/// <param name="Time">From release; 0 or above.</param>
/// <param name="Height">Above the pad; any value.</param>
/// <param name="Speed">Along the path, up positive; any value.</param>
public sealed record FlightPoint(Duration Time, Length Height, Speed Speed);
