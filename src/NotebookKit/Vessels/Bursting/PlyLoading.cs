using NotebookKit.Vessels.Laminates;
using UnitsNet;

namespace NotebookKit.Vessels.Bursting;

/// <summary>What one family of fibres carries under a pressure.</summary>
/// <param name="Ply">Name of the ply.</param>
/// <param name="Angle">Angle of the family from the axis, as laid.</param>
/// <param name="Stress">Stress in its own axes.</param>
/// <param name="FibreUse">Stress along its fibres over the strength that fabrication delivers.</param>
/// <param name="IsCracked">Whether its resin has cracked.</param>
/// <remarks>Source: as <see cref="VesselExpansion"/>.</remarks>
public sealed record PlyLoading(string Ply, Angle Angle, PlyStress Stress, Ratio FibreUse, bool IsCracked);
