namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>
/// What a step loop needs of the component method at one Mach number, on reference area and diameter. Stations are from the nose tip, aft
/// positive, so that forces and moments about any centre of gravity follow from the three sums.
/// </summary>
/// <param name="Slope">Σ CNα [1/rad].</param>
/// <param name="SlopeStation">Σ CNα x [m/rad].</param>
/// <param name="SlopeStationSquare">Σ CNα x² [m²/rad].</param>
/// <param name="RollForcing">Rolling-moment coefficient of the fins' own cants at no roll rate [-].</param>
/// <param name="RollDamping">Clp by p d / 2V [-].</param>
internal readonly record struct AerodynamicSums(double Slope, double SlopeStation, double SlopeStationSquare, double RollForcing,
    double RollDamping)
{
    /// <summary>Σ CNα (x − x_cg), the pitching moment's arm sum about a centre of gravity [m/rad]; positive is stable.</summary>
    public double Arm(double gravityM) => SlopeStation - (Slope * gravityM);

    /// <summary>Σ CNα (x − x_cg)², which damps pitching [m²/rad].</summary>
    public double ArmSquare(double gravityM) => SlopeStationSquare - (2 * gravityM * SlopeStation) + (gravityM * gravityM * Slope);
}
