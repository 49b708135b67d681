using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>One ply of a tube wall: a ±angle pair, or a single family at 0° or 90°.</summary>
/// <param name="Name">What it is called in results.</param>
/// <param name="Lamina">Stiffness of its unidirectional ply.</param>
/// <param name="Strength">Strength of its unidirectional ply.</param>
/// <param name="Angle">Angle of its fibres from the axis, both signs laid; 0° to 90°.</param>
/// <param name="Thickness">Thickness of both directions together; above 0.</param>
public sealed record TubePly(string Name, Lamina Lamina, PlyStrength Strength, Angle Angle, Length Thickness)
{
    internal WallLayer ToLayer(int ply) => new()
    {
        E1 = Lamina.Longitudinal.Pascals,
        E2 = Lamina.Transverse.Pascals,
        G12 = Lamina.Shear.Pascals,
        Nu12 = Lamina.PoissonRatio,
        Strength = StrengthPascals.Of(Strength),
        Angle = Angle.Radians,
        Thickness = Thickness.Meters,
        Ply = ply,
        NettingStrength = Strength.LongitudinalTension.Pascals,
    };
}
