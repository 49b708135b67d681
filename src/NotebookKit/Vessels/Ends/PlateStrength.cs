using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;

namespace NotebookKit.Vessels.Ends;

/// <summary>
/// A flat closure on a supported rim, with what fills its hole hanging on the hole's edge, in closed form. The thrust at every radius is
/// then that of a whole plate, p·r/2, so the stress at the edge of the hole is 3p/(4t²)·((3 + ν)a² + (1 − ν)b²).
/// </summary>
/// <remarks>
/// Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, §16, §17; collapse, Hopkins and Prager, J. Mech.
/// Phys. Solids 2, 1953 (unverified), the same as <see cref="Modes.PlateCollapse"/> on a supported rim by Tresca.
/// </remarks>
internal static class PlateStrength
{
    public const string YieldFormula = @"p = \frac{4\,\sigma_y\,t^2}{3\left((3+\nu)\,a^2+(1-\nu)\,b^2\right)}";

    public const string WholeYieldFormula = @"p = \frac{8}{3\,(3+\nu)}\,\sigma_y\left(\frac{t}{r}\right)^2";

    public const string CollapseFormula =
        @"p = \min\left(\frac{6}{1+\beta+\beta^2}\,\frac{\sigma_y t^2}{4\,a^2},\ \frac{\sigma_y t}{a}\right),\ \beta = \frac{b}{a}";

    public static double YieldPascals(FlatClosure plate, double bore)
    {
        double a = bore / 2, b = plate.Opening.Meters / 2, t = plate.Wall.Meters, nu = plate.Material.PoissonRatio.Value;
        var arms = b > 0 ? 2 * ((3 + nu) * a * a + (1 - nu) * b * b) : (3 + nu) * a * a;
        return 8 * plate.Material.YieldStrength.Value.Pascals * t * t / (3 * arms);
    }

    /// <summary>Collapse in bending, no more than where the rim shears through; never below first yield [Pa].</summary>
    public static double CollapsePascals(FlatClosure plate, double bore)
    {
        double a = bore / 2, hole = plate.Opening.Meters / bore, t = plate.Wall.Meters, strength =
            plate.Material.YieldStrength.Value.Pascals;
        var bending = 1 / PlateLoad.Pressure(hole, 1).Mean(1) * strength * t * t / (4 * a * a);
        // Shear around the rim at half the yield strength (Tresca): p·πa² = τ·2πa·t.
        return Math.Min(bending, strength * t / a);
    }
}
