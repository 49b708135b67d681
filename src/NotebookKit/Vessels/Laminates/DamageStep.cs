using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>One thing that gives way on the way to burst.</summary>
/// <param name="MeanStress">Load over thickness of the laminate, around the tube (along where nothing pulls around).</param>
/// <param name="Mode">What gives way.</param>
/// <param name="Ply">Name of the ply; "wall" or "liner" otherwise.</param>
public sealed record DamageStep(Pressure MeanStress, FailureMode Mode, string Ply);
