using UnitsNet;

namespace NotebookKit.Aerodynamics.Fins;

/// <summary>A corner of a fin's outline.</summary>
/// <param name="Aft">Distance aft of the root leading edge; any finite value.</param>
/// <param name="Out">Distance out from the body surface; 0 or above.</param>
public readonly record struct PlanformPoint(Length Aft, Length Out);
