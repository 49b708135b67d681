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
            Air = new(site.Atmosphere.Law, site.Elevation.Meters, site.Wind, -numbers.RailM * direction.Z, gusts, draw.WindSpeed, draw.WindTurn),
            RailDirection = direction,
        };
    }
}
