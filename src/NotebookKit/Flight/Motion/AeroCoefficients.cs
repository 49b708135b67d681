namespace NotebookKit.Flight.Motion;

/// <summary>
/// Slopes of a finned body at one Mach number, multiplied by the reference area, stations from the nose tip.
/// </summary>
/// <param name="Slope">Sum of normal-force slopes times area [m²/rad].</param>
/// <param name="First">The same times station [m³/rad].</param>
/// <param name="Second">The same times station squared [m⁴/rad].</param>
/// <param name="RollByCant">Rolling moment per dynamic pressure and radian of cant of every fin [m³/rad].</param>
/// <param name="RollBuiltIn">Rolling moment per dynamic pressure by the cant that the fins have [m³].</param>
/// <param name="RollDamping">Rolling moment per dynamic pressure and roll rate over speed, negative [m⁴/rad].</param>
internal readonly record struct AeroCoefficients(double Slope, double First, double Second, double RollByCant, double RollBuiltIn,
    double RollDamping)
{
    /// <summary>Sum of slope times distance aft of a station [m³/rad]: above zero where the vehicle is stable about it.</summary>
    public double MomentAbout(double stationM) => First - (Slope * stationM);

    /// <summary>Sum of slope times distance squared from a station [m⁴/rad].</summary>
    public double DampingAbout(double stationM) => Second - (stationM * ((2 * First) - (stationM * Slope)));
}
