namespace NotebookKit.Flight.Dispersion;

/// <summary>How far the day varies, in SI numbers: wind and rail, the same for all that flies together.</summary>
/// <param name="WindSpeed">Standard deviation of the wind's speed, as a fraction [-].</param>
/// <param name="WindTurn">That of its direction [rad].</param>
/// <param name="Tilt">That of the rail's tilt to north and to east [rad].</param>
internal readonly record struct DaySpread(double WindSpeed, double WindTurn, double Tilt)
{
    public static DaySpread Of(Spread spread) => new(spread.WindSpeed.DecimalFractions, spread.WindDirection.Radians, spread.RailTilt.Radians);
}
