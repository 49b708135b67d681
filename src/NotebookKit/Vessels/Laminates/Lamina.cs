using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Laminates;

/// <summary>Stiffness of one unidirectional ply in its own axes: 1 along the fibres, 2 across.</summary>
/// <param name="Longitudinal">Modulus along the fibres, E1; above 0.</param>
/// <param name="Transverse">Modulus across the fibres, E2; above 0.</param>
/// <param name="Shear">In-plane shear modulus, G12; above 0.</param>
/// <param name="PoissonRatio">Major Poisson's ratio ν12 [-]; 0 or above, below √(E1/E2).</param>
/// <remarks>Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, ch. 2 (plane stress).</remarks>
public sealed record Lamina(Pressure Longitudinal, Pressure Transverse, Pressure Shear, double PoissonRatio)
{
    /// <summary>Minor Poisson's ratio ν21 = ν12·E2/E1 [-]. Source: Kaw 2006, Eq. 2.83.</summary>
    public double MinorPoissonRatio => PoissonRatio * (Transverse / Longitudinal);

    /// <summary>Its moduli when loaded at an angle to the fibres. Source: Kaw 2006, §2.6.</summary>
    /// <param name="angle">Angle of the fibres from the load's x axis; any.</param>
    /// <exception cref="InvalidDesignException">The stiffness is no ply's.</exception>
    public OffAxisConstants At(Angle angle) => OffAxisConstants.Of(this, angle);

    /// <summary>Reduced stiffness of the ply turned by an angle; indices as printed, Q̄16 is <c>Stiffness(angle, 1, 6)</c>. Source: Kaw
    /// 2006, Eq. 2.104.</summary>
    /// <param name="angle">Angle of the fibres from the x axis; any.</param>
    /// <param name="row">1, 2 or 6.</param>
    /// <param name="column">1, 2 or 6.</param>
    /// <exception cref="InvalidDesignException">The stiffness is no ply's.</exception>
    public Pressure Stiffness(Angle angle, int row, int column) => Pressure.FromPascals(Finite.Check(
        PlaneStiffness.Of(Checked()).Rotated(Finite.Radians(angle, "angle of the fibres"))[row, column], "stiffness of the ply", "Pa"));

    /// <summary>Stresses along, across and in shear that a stress in the wall's axes puts into a ply. Source: Kaw 2006, Eq. 2.94.</summary>
    /// <param name="angle">Angle of the fibres from the x axis; any.</param>
    /// <param name="x">Stress along x; −10⁶ to 10⁶ GPa.</param>
    /// <param name="y">Stress along y; −10⁶ to 10⁶ GPa.</param>
    /// <param name="xy">Shear stress; −10⁶ to 10⁶ GPa.</param>
    /// <exception cref="OutOfRangeException">A stress is out of range.</exception>
    public static PlyStress Resolve(Angle angle, Pressure x, Pressure y, Pressure xy)
    {
        var (s, c) = Math.SinCos(Finite.Radians(angle, "angle of the fibres"));
        foreach (var value in new[] { x, y, xy }) Stresses.Check(value, "stress of the wall", "Check the load and its unit.");
        return new PlyStress(x * (c * c) + y * (s * s) + xy * (2 * s * c), x * (s * s) + y * (c * c) - xy * (2 * s * c),
            (y - x) * (s * c) + xy * (c * c - s * s));
    }

    /// <summary>For example "E1 105 GPa, E2 6.48 GPa, G12 2.93 GPa, ν12 0.283".</summary>
    public override string ToString() =>
        $"E1 {Longitudinal.Show(PressureUnit.Gigapascal)}, E2 {Transverse.Show(PressureUnit.Gigapascal)}, G12 "
            + $"{Shear.Show(PressureUnit.Gigapascal)}, ν12 {Digits.Round(PoissonRatio)}";

    /// <summary>Whether it is the stiffness of a ply: moduli of 1 Pa to 10 000 GPa, an energy that is positive under any load.</summary>
    internal bool IsSound => Moduli.Contains(Longitudinal) && Moduli.Contains(Transverse) && Moduli.Contains(Shear)
        && PoissonRatio >= 0 && PoissonRatio * PoissonRatio * Transverse.Pascals < Longitudinal.Pascals;

    /// <summary>The ply, or a refusal where it is none.</summary>
    internal Lamina Checked()
    {
        if (!IsSound) InvalidDesignException.ThrowIfAny("Ply", [VesselsFindings.PlyStiffnessRefused(1, ToString())]);
        return this;
    }

    private static ValidRange<Pressure> Moduli => new(1.Pascals(), 10_000.Gigapascals());

    private static ValidRange<Pressure> Stresses => new((-1e6).Gigapascals(), 1e6.Gigapascals());
}
