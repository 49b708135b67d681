using UnitsNet;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>One ply of a fin's sheet. Source of its use: R. M. Jones, Mechanics of Composite Materials.</summary>
/// <param name="LongitudinalModulus">Young's modulus along the fibre or the warp; 1 to 1000 GPa.</param>
/// <param name="TransverseModulus">Young's modulus across the fibre or along the weft; 0.5 to 1000 GPa.</param>
/// <param name="Shear">In-plane shear modulus; 0.2 to 400 GPa.</param>
/// <param name="PoissonRatio">Poisson's ratio ν₁₂ [-]; 0 to 0.6.</param>
/// <param name="Angle">Angle of the fibre to the fin's span; −90 to 90°.</param>
/// <param name="Thickness">Cured thickness; 0.01 to 20 mm.</param>
public sealed record SheetPly(Pressure LongitudinalModulus, Pressure TransverseModulus, Pressure Shear, double PoissonRatio, Angle Angle,
    Length Thickness)
{
    /// <summary>Q̄66 of the ply in the axes of the sheet [Pa].</summary>
    internal double Q66
    {
        get
        {
            var (e1, e2, g) = (LongitudinalModulus.Pascals, TransverseModulus.Pascals, Shear.Pascals);
            var denominator = 1 - (PoissonRatio * PoissonRatio * e2 / e1);
            var (q11, q22, q12) = (e1 / denominator, e2 / denominator, PoissonRatio * e2 / denominator);
            var (s, c) = Math.SinCos(Angle.Radians);
            var (s2, c2) = (s * s, c * c);
            return ((q11 + q22 - (2 * q12) - (2 * g)) * s2 * c2) + (g * ((s2 * s2) + (c2 * c2)));
        }
    }
}
