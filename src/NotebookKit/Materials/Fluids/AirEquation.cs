namespace NotebookKit.Materials.Fluids;

/// <summary>Numbers of the equation of state of dry air as one pseudo-pure gas.</summary>
/// <remarks>
/// Source: E. W. Lemmon, R. T. Jacobsen, S. G. Penoncello, D. G. Friend, Thermodynamic properties of air and mixtures of nitrogen, argon,
/// and oxygen from 60 to 2000 K at pressures to 2000 MPa, J. Phys. Chem. Ref. Data 29 (2000) 331, Tables 12 and 13. Constant and linear
/// ideal terms set the zeros only.
/// </remarks>
internal static class AirEquation
{
    public static HelmholtzEquation Create() => new()
    {
        GasConstant = 8.31451 / 0.02896546,
        ReducingKelvins = 132.6312,
        ReducingDensity = 10447.7 * 0.02896546,
        IdealLogarithm = 2.490888032,
        IdealPowers = [(6.057194e-8, -3), (-2.10274769e-5, -2), (-1.58860716e-4, -1), (-13.841928076, 0), (17.275266575, 1),
            (-1.9536342e-4, 1.5)],
        IdealVibrations = [(0.791309509, 25.36365), (0.212236768, 16.90741)],
        IdealExponentials = [(-0.197938904, 87.31279, 2.0 / 3)],
        Powers =
        [
            (0.118160747229, 0, 1, 0), (0.713116392079, 0.33, 1, 0), (-1.61824192067, 1.01, 1, 0), (0.0714140178971, 0, 2, 0),
            (-0.0865421396646, 0, 3, 0), (0.134211176704, 0.15, 3, 0), (0.0112626704218, 0, 4, 0), (-0.0420533228842, 0.2, 4, 0),
            (0.0349008431982, 0.35, 4, 0), (0.000164957183186, 1.35, 6, 0), (-0.101365037912, 1.6, 1, 1), (-0.17381369097, 0.8, 3, 1),
            (-0.0472103183731, 0.95, 5, 1), (-0.0122523554253, 1.25, 6, 1), (-0.146629609713, 3.6, 1, 2), (-0.0316055879821, 6, 3, 2),
            (0.000233594806142, 3.25, 11, 2), (0.0148287891978, 3.5, 1, 3), (-0.00938782884667, 15, 3, 3),
        ],
    };
}
