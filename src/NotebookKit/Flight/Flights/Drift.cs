using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Flights;

/// <summary>Drift of a canopy with the wind. Source: the wind profile's integral over height, in closed form.</summary>
public static class Drift
{
    /// <summary>How far a canopy drifts from opening to the ground at a constant descent speed.</summary>
    /// <param name="from">Height it opens at, above ground; 1 to 20 000 m.</param>
    /// <param name="descent">Descent speed; 0.5 to 100 m/s.</param>
    /// <param name="wind">Wind against height.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static DriftResult Descending(Length from, Speed descent, WindProfile wind)
    {
        ArgumentNullException.ThrowIfNull(wind);
        new ValidRange<Length>(1.Metres(), 20_000.Metres()).Check(from, "height of opening", "Give the height above ground.");
        new ValidRange<Speed>(0.5.MetresPerSecond(), 100.MetresPerSecond()).Check(descent, "descent speed",
            "Take it from the canopy's descent.");
        wind.Integral(from.Meters, out var east, out var north);
        var (x, y) = (east / descent.MetersPerSecond, north / descent.MetersPerSecond);
        return new DriftResult
        {
            From = from,
            Descent = descent,
            East = Length.FromMeters(x),
            North = Length.FromMeters(y),
            Distance = Length.FromMeters(Math.Sqrt((x * x) + (y * y))),
            Time = Duration.FromSeconds(from.Meters / descent.MetersPerSecond),
            MeanWind = Speed.FromMetersPerSecond(Math.Sqrt((east * east) + (north * north)) / from.Meters),
            Wind = wind,
            Findings = wind.IsGiven ? [] : [FlightFindings.DriftNeedsWind()],
        };
    }
}
