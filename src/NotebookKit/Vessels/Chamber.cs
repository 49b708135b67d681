using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

/// <summary>All that propulsion and filling need to know of a vessel: how much it holds, how wide it is, what it may be filled to.</summary>
/// <param name="Volume">Internal volume; above 0.</param>
/// <param name="Bore">Internal diameter; above 0.</param>
/// <param name="RatedPressure">Highest pressure it may be filled to; above 0.</param>
public sealed record Chamber(Volume Volume, Length Bore, GaugePressure RatedPressure);
