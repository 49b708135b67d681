namespace NotebookKit.Vessels.Laminates;

/// <summary>One thing that gives way on the way to burst.</summary>
/// <param name="LineLoad">Load at which it gives way [N/m]; pressure times radius for a closed tube.</param>
/// <param name="Mode">What gives way.</param>
/// <param name="Ply">Which ply; −1 for the liner or the whole wall.</param>
internal readonly record struct WallEvent(double LineLoad, FailureMode Mode, int Ply);
