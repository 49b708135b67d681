using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>A site whose wind and rail vary from flight to flight.</summary>
internal sealed class VariedDay(LaunchSite site, Spread spread, SeededSamples samples, Length gustTop)
{
    private readonly DaySpread _numbers = DaySpread.Of(spread);

    public DayDraw Draw(long flight) => DayDraw.Of(_numbers, samples, flight);

    /// <summary>Gusts of one flight, where there are any.</summary>
    public GustField? Gusts(long flight) => spread.Gusts?.Field(gustTop, samples.Part((int)(flight % int.MaxValue)).Seed) ?? site.Gusts;

    /// <summary>A vehicle's numbers on that day.</summary>
    public FlightNumbers Apply(FlightNumbers numbers, in DayDraw draw, GustField? gusts)
    {
        var direction = site.Rail.Direction(draw.TiltNorth, draw.TiltEast);
        return numbers with
        {
            Air = new(site.Atmosphere.Law, site.Elevation.Meters, site.Wind, -numbers.RailM * direction.Z, gusts, draw.WindSpeed,
                draw.WindTurn),
            RailDirection = direction,
        };
    }
}

/// <summary>How far the day varies, in SI numbers: wind and rail, the same for all that flies together.</summary>
/// <param name="WindSpeed">Standard deviation of the wind's speed, as a fraction [-].</param>
/// <param name="WindTurn">That of its direction [rad].</param>
/// <param name="Tilt">That of the rail's tilt to north and to east [rad].</param>
internal readonly record struct DaySpread(double WindSpeed, double WindTurn, double Tilt)
{
    public static DaySpread Of(Spread spread) => new(spread.WindSpeed.DecimalFractions, spread.WindDirection.Radians,
        spread.RailTilt.Radians);
}
