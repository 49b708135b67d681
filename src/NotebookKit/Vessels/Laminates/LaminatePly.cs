using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>One ply of a laminate.</summary>
/// <param name="Lamina">Its stiffness.</param>
/// <param name="Angle">Angle of its fibres from the x axis; −90° to 90°.</param>
/// <param name="Thickness">Cured thickness; above 0.</param>
public sealed record LaminatePly(Lamina Lamina, Angle Angle, Length Thickness);
