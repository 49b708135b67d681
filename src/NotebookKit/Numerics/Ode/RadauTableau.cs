namespace NotebookKit.Numerics.Ode;

/// <summary>
/// Coefficients of the Radau IIA method of order 5, and the transformation that parts its three stages into one real and one complex
/// system.
/// </summary>
/// <remarks>Source: E. Hairer, G. Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, IV.5 (table 5.6) and IV.8.</remarks>
internal static class RadauTableau
{
    public const double Root6 = 2.449489742783178098;

    public const double C1 = (4 - Root6) / 10, C2 = (4 + Root6) / 10;

    /// <summary>Eigenvalues of the inverse of the method's matrix.</summary>
    public const double Real = 3.637834252744495732, ComplexRe = 2.681082873627752134, ComplexIm = -3.050430199247410570;

    /// <summary>Stages from transformed stages; the third row is 1, 1, 0.</summary>
    public const double T11 = 0.09443876248897524, T12 = -0.14125529502095421, T13 = 0.03002919410514742,
        T21 = 0.25021312296533332, T22 = 0.20412935229379994, T23 = -0.38294211275726192;

    /// <summary>Transformed stages from stages.</summary>
    public const double S11 = 4.17871859155190428, S12 = 0.32768282076106237, S13 = 0.52337644549944951,
        S21 = -4.17871859155190428, S22 = -0.32768282076106237, S23 = 0.47662355450055044,
        S31 = 0.50287263494578682, S32 = -2.57192694985560522, S33 = 0.59603920482822492;

    /// <summary>Error estimate by an embedded formula of order 3.</summary>
    public const double E1 = (-13 - 7 * Root6) / 3, E2 = (-13 + 7 * Root6) / 3, E3 = -1.0 / 3;
}
