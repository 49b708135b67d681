using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;

namespace NotebookKit.Vessels.Bursting;

/// <summary>One thing that gives way in the wall on the way to burst.</summary>
/// <param name="Pressure">Pressure at which it gives way.</param>
/// <param name="Mode">What gives way.</param>
/// <param name="Ply">Name of the ply, or "liner", or "wall".</param>
public sealed record BurstStep(GaugePressure Pressure, FailureMode Mode, string Ply);
