using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ratings;
using UnitsNet;

namespace NotebookKit.Clearance.Learned;

/// <summary>What one set of tests allows, from the rating to the landing: fill, apogee, timer and drift as bands over the drag.</summary>
/// <remarks>Source: the rating's and the flight's models.</remarks>
public sealed record FlightBand
{
    private FlightBand(Rating rating, GaugePressure fill, FlightFigures most, FlightFigures middle, FlightFigures least)
    {
        Rating = rating;
        Fill = fill;
        (MostDrag, MiddleDrag, LeastDrag) = (most, middle, least);
    }

    /// <summary>The rating.</summary>
    public Rating Rating { get; }

    /// <summary>Pressure that the vehicle is filled to in these flights.</summary>
    public GaugePressure Fill { get; }

    /// <summary>The flight with the most drag: the lowest.</summary>
    public FlightFigures MostDrag { get; }

    /// <summary>The flight with the drag in the middle of its band.</summary>
    public FlightFigures MiddleDrag { get; }

    /// <summary>The flight with the least drag: the highest.</summary>
    public FlightFigures LeastDrag { get; }

    /// <summary>Lowest and highest apogee.</summary>
    public (Length Low, Length High) Apogee => (MostDrag.Apogee, LeastDrag.Apogee);

    /// <summary>Earliest and latest time of apogee, which a timer is set between.</summary>
    public (Duration Low, Duration High) Timer => (MostDrag.ApogeeTime, LeastDrag.ApogeeTime);

    /// <summary>Shortest and longest drift.</summary>
    public (Length Low, Length High) Drift => MostDrag.Drift <= LeastDrag.Drift ? (MostDrag.Drift, LeastDrag.Drift)
        : (LeastDrag.Drift, MostDrag.Drift);

    // Source: flights in three degrees of freedom at both ends and in the middle of the drag's band.
    internal static FlightBand Of(Vehicle vehicle, LaunchSite site, Rating rating, Pressure below)
    {
        var fill = rating.WorkingPressure + -below;
        var filled = vehicle with { Charge = vehicle.Charge with { Chamber = rating.Vessel.ToChamber(rating), Pressure = fill } };
        FlightFigures Fly(DragEnd end) => (filled with { DragEnd = end }).Fly(site).Figures;
        return new(rating, fill, Fly(DragEnd.High), Fly(DragEnd.Middle), Fly(DragEnd.Low));
    }
}
