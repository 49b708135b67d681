using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>Moduli of one ply, or of a whole wall, in the wall's own axes: x along, y around.</summary>
/// <param name="Axial">Modulus along x, Ex.</param>
/// <param name="Hoop">Modulus along y, Ey.</param>
/// <param name="Shear">Shear modulus, Gxy.</param>
/// <param name="AxialPoissonRatio">νxy: contraction along y under pull along x [-].</param>
/// <param name="HoopPoissonRatio">νyx: contraction along x under pull along y [-].</param>
/// <param name="AxialCoupling">Shear that a pull along x brings, mx = −S̄16·E1 for a ply; 0 for a balanced wall [-].</param>
/// <param name="HoopCoupling">Shear that a pull along y brings, my = −S̄26·E1 for a ply; 0 for a balanced wall [-].</param>
/// <remarks>Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, §2.6 and §4.4.</remarks>
public sealed record OffAxisConstants(
    Pressure Axial, Pressure Hoop, Pressure Shear, double AxialPoissonRatio, double HoopPoissonRatio, double AxialCoupling,
        double HoopCoupling)
{
    internal static OffAxisConstants Of(Lamina lamina, Angle angle) =>
        Of(PlaneStiffness.Of(lamina.Checked()).Rotated(Finite.Radians(angle, "angle of the fibres")).Inverse(),
            lamina.Longitudinal.Pascals);

    internal static OffAxisConstants Of(PlaneStiffness compliance, double axialPascals) => new(
        Pressure.FromPascals(Finite.Check(1 / compliance.S11, "modulus of the wall", "Pa")),
        Pressure.FromPascals(Finite.Check(1 / compliance.S22, "modulus of the wall", "Pa")),
        Pressure.FromPascals(Finite.Check(1 / compliance.S66, "modulus of the wall", "Pa")),
        -compliance.S12 / compliance.S11,
        -compliance.S12 / compliance.S22,
        -compliance.S16 * axialPascals,
        -compliance.S26 * axialPascals);
}
