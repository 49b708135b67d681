using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Laminates;

/// <summary>Stress in one ply in its own axes.</summary>
/// <param name="Longitudinal">Along the fibres, σ1; tension above 0.</param>
/// <param name="Transverse">Across the fibres, σ2; tension above 0.</param>
/// <param name="Shear">In-plane shear, τ12; any sign.</param>
public sealed record PlyStress(Pressure Longitudinal, Pressure Transverse, Pressure Shear)
{
    /// <summary>For example "339 MPa along, 2.1 MPa across, 6 MPa shear".</summary>
    public override string ToString() =>
        $"{Longitudinal.Show(PressureUnit.Megapascal)} along, {Transverse.Show(PressureUnit.Megapascal)} across, "
            + $"{Shear.Show(PressureUnit.Megapascal)} shear";
}
