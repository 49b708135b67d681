namespace NotebookKit.Aerodynamics.Drag;

/// <summary>The band of drag against Mach number, for a flight to carry as uncertainty. Source: see <see cref="DragResult"/>.</summary>
/// <param name="Low">Late transition and the lower base form.</param>
/// <param name="Middle">Middle of the band.</param>
/// <param name="High">Early transition and the higher base form.</param>
public sealed record DragCurves(DragCurve Low, DragCurve Middle, DragCurve High);
