namespace NotebookKit.Materials.Fluids;

/// <summary>Numbers of the equation of state of helium.</summary>
/// <remarks>
/// Source: D. O. Ortiz Vega, K. R. Hall, J. C. Holste, A. H. Harvey, E. W. Lemmon, An equation of state for the thermodynamic properties of
/// helium, NISTIR 8474, 2023; the coefficients as a general-purpose property library publishes them, the report itself not at hand.
/// </remarks>
internal static class HeliumEquation
{
    public static HelmholtzEquation Create() => new()
    {
        GasConstant = 8.3144598 / 0.004002602,
        ReducingKelvins = 5.1953,
        ReducingDensity = 17383.7 * 0.004002602,
        IdealLogarithm = 1.5,
        IdealPowers = [(0.1871304489697973 - 0.0138816556862182, 0), (0.4848903984696551 - 0.0174381783145519, 1)],
        IdealVibrations = [],
        Powers =
        [
            (0.015559018, 1, 4, 0), (3.0638932, 0.425, 1, 0), (-4.2420844, 0.63, 1, 0), (0.054418088, 0.69, 2, 0),
            (-0.18971904, 1.83, 2, 0), (0.087856262, 0.575, 3, 0), (2.2833566, 0.925, 1, 1), (-0.53331595, 1.585, 1, 2),
            (-0.53296502, 1.69, 3, 2), (0.99444915, 1.51, 2, 1), (-0.30078896, 2.9, 2, 2), (-1.6432563, 0.8, 1, 1),
        ],
        Bells =
        [
            (0.8029102, 1.26, 2, 1.5497, 0.596, 0.2471, 3.15), (0.026838669, 3.51, 1, 9.245, 0.3423, 0.0983, 2.54505),
            (0.04687678, 2.785, 2, 4.76323, 0.761, 0.1556, 1.2513), (-0.14832766, 1, 1, 6.3826, 0.9747, 2.6782, 1.9416),
            (0.03016211, 4.22, 1, 8.7023, 0.5868, 2.7077, 0.5984), (-0.019986041, 0.83, 3, 0.255, 0.5627, 0.6621, 2.2282),
            (0.14283514, 1.575, 2, 0.3523, 2.5346, 0.1775, 1.606), (0.007418269, 3.447, 2, 0.1492, 3.6763, 0.4821, 3.815),
            (-0.22989793, 0.73, 3, 0.05, 4.5245, 0.3069, 1.61958), (0.79224829, 1.634, 2, 0.1668, 5.039, 0.1758, 0.6407),
            (-0.049386338, 6.13, 2, 42.2358, 0.959, 1357.6577, 1.076),
        ],
    };
}
