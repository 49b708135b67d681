using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>A corner of the flying field, seen from the pad.</summary>
/// <param name="East">To the east of the pad; any value.</param>
/// <param name="North">To the north of the pad; any value.</param>
public readonly record struct FieldCorner(Length East, Length North);
