using NotebookKit.Provenance;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Laying;

/// <summary>One ply as it lies on the vessel.</summary>
/// <param name="Ply">The ply.</param>
/// <param name="InnerDiameter">Diameter it is laid on.</param>
/// <param name="Angle">Angle of its fibres from the axis; none for a cloth along and around, or a veil.</param>
/// <param name="FibreDirections">How its fibres lie, in words: "±47.1°", "0°/90°".</param>
/// <param name="Thickness">Cured thickness.</param>
/// <param name="ArealWeight">Dry weight of a square metre as laid, all turns.</param>
/// <param name="FibreFraction">Fibre volume fraction.</param>
/// <param name="CutLength">Length to cut along the vessel: for a sleeve at its nominal diameter, for a tape its whole length.</param>
/// <param name="CutWidth">Length to cut around the vessel; none for a sleeve or a tape.</param>
/// <param name="FibreMass">Dry fibre.</param>
/// <param name="ResinMass">Resin it holds, nothing wasted.</param>
/// <param name="Fit">How a sleeve fits; none for other plies.</param>
/// <param name="Findings">What has to be said of it.</param>
public sealed record PlyGeometry(
    Ply Ply, Length InnerDiameter, Angle? Angle, string FibreDirections, Length Thickness, AreaDensity ArealWeight, Ratio FibreFraction,
    Length CutLength, Length? CutWidth, Mass FibreMass, Mass ResinMass, SleeveFit? Fit, IReadOnlyList<Finding> Findings)
{
    /// <summary>Diameter over it.</summary>
    public Length OuterDiameter => InnerDiameter + Thickness + Thickness;

    /// <summary>Whether it is counted on for strength.</summary>
    public bool CarriesLoad => Ply is not VeilWrap;
}
