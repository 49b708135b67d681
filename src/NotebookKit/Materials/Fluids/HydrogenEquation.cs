namespace NotebookKit.Materials.Fluids;

/// <summary>Numbers of the equation of state of normal hydrogen.</summary>
/// <remarks>
/// Source: J. W. Leachman, R. T. Jacobsen, S. G. Penoncello, E. W. Lemmon, Fundamental equations of state for parahydrogen, normal
/// hydrogen, and orthohydrogen, J. Phys. Chem. Ref. Data 38 (2009) 721.
/// </remarks>
internal static class HydrogenEquation
{
    public static HelmholtzEquation Create() => new()
    {
        GasConstant = 8.314472 / 0.00201588,
        ReducingKelvins = 33.145,
        ReducingDensity = 15508 * 0.00201588,
        IdealLogarithm = 1.5,
        IdealPowers = [(-1.4579856475, 0), (1.888076782, 1)],
        IdealVibrations = [(1.616, 16.0205159149), (-0.4117, 22.6580178006), (-0.792, 60.0090511389), (0.758, 74.9434303817),
            (1.217, 206.9392065168)],
        Powers =
        [
            (-6.93643, 0.6844, 1, 0), (0.01, 1, 4, 0), (2.1101, 0.989, 1, 0), (4.52059, 0.489, 1, 0), (0.732564, 0.803, 2, 0),
            (-1.34086, 1.1444, 2, 0), (0.130985, 1.409, 3, 0), (-0.777414, 1.754, 1, 1), (0.351944, 1.311, 3, 1),
        ],
        Bells =
        [
            (-0.0211716, 4.187, 2, 1.685, 1.506, 0.171, 0.7164), (0.0226312, 5.646, 1, 0.489, 0.156, 0.2245, 1.3444),
            (0.032187, 0.791, 3, 0.103, 1.736, 0.1304, 1.4517), (-0.0231752, 7.249, 1, 2.506, 0.67, 0.2785, 0.7204),
            (0.0557346, 2.986, 1, 1.607, 1.662, 0.3967, 1.5445),
        ],
    };
}
