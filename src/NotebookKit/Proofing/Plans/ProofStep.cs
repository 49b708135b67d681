using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Plans;

/// <summary>One step of a proof: the pressure, how long it's held, and how much water it should take.</summary>
/// <param name="Pressure">Gauge pressure of the step.</param>
/// <param name="Hold">How long it is held.</param>
/// <param name="WallExpansion">Expected growth of the bore since no pressure.</param>
/// <param name="WaterCompressed">Expected compression of the water since no pressure.</param>
/// <param name="AirCompressed">Expected compression of trapped air since no pressure.</param>
public sealed record ProofStep(GaugePressure Pressure, Duration Hold, Volume WallExpansion, Volume WaterCompressed, Volume AirCompressed)
{
    /// <summary>Water that the pump should have brought by then: wall, water and air together.</summary>
    public Volume WaterToPump => WallExpansion + WaterCompressed + AirCompressed;
}
