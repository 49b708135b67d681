using NotebookKit.Flight.Design;

namespace NotebookKit.Flight.Motion;

/// <summary>When the canopy comes out and what it does, in SI numbers.</summary>
/// <param name="Trigger">What brings it out.</param>
/// <param name="DelayS">From apogee or from release, as the trigger has it [s].</param>
/// <param name="DragM2">Drag area of the open canopy [m²].</param>
/// <param name="FillM">Distance it takes to fill [m].</param>
/// <param name="Growth">Exponent of its growth while it fills [-].</param>
internal readonly record struct DeploymentNumbers(DeploymentTrigger Trigger, double DelayS, double DragM2, double FillM, double Growth);
