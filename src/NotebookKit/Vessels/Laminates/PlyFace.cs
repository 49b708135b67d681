using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>One face of a ply in a loaded laminate.</summary>
/// <param name="Ply">Number of the ply, counted from the first face of the stack; 1 or above.</param>
/// <param name="Angle">Angle of its fibres from the x axis.</param>
/// <param name="Place">Which face of the ply.</param>
/// <param name="Height">Distance of the face from the middle of the stack; below 0 on the first plies' side.</param>
/// <param name="Strain">Strain there in the laminate's axes.</param>
/// <param name="StressX">Stress along x; tension above 0.</param>
/// <param name="StressY">Stress along y; tension above 0.</param>
/// <param name="StressXy">Shear stress in the laminate's axes.</param>
/// <param name="Stress">Stress in the ply's own axes: along the fibres, across, in shear.</param>
public sealed record PlyFace(
    int Ply, Angle Angle, PlyPlace Place, Length Height, LaminateStrain Strain, Pressure StressX, Pressure StressY, Pressure StressXy,
    PlyStress Stress);

/// <summary>A place through the thickness of a ply.</summary>
public enum PlyPlace
{
    /// <summary>The face on the side of the first ply.</summary>
    First,

    /// <summary>The middle of the ply.</summary>
    Middle,

    /// <summary>The face on the side of the last ply.</summary>
    Last,
}
