using UnitsNet;

namespace NotebookKit.Proofing;

/// <summary>A fall of the gauge from one reading to the next that is no leak and no noise.</summary>
/// <param name="At">Time of it.</param>
/// <param name="Fall">How far the gauge fell.</param>
/// <param name="Volume">Volume that explains it: water lost at a fitting, or growth of the wall.</param>
public sealed record SuddenDrop(Duration At, Pressure Fall, Volume Volume);
