using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>
/// Horizontal gusts against height, frozen while a vehicle passes. The same seed gives the same field on any machine and thread count.
/// Source: see <see cref="DrydenTurbulence"/>.
/// </summary>
public sealed class GustField
{
    internal const double StepM = 1;

    private readonly double[] _eastMps;
    private readonly double[] _northMps;

    internal GustField(ulong seed, double[] eastMps, double[] northMps)
    {
        Seed = seed;
        (_eastMps, _northMps) = (eastMps, northMps);
    }

    /// <summary>Seed it was made from.</summary>
    public ulong Seed { get; }

    /// <summary>Height of the field; the top value is held above.</summary>
    public Length Top => Length.FromMeters((_eastMps.Length - 1) * StepM);

    /// <summary>Gust towards east and north at a height. Source: see the type.</summary>
    /// <param name="height">Height above ground; any, held to the field.</param>
    public (Speed East, Speed North) At(Length height)
    {
        Velocity(height.Meters, out var east, out var north);
        return (Speed.FromMetersPerSecond(east), Speed.FromMetersPerSecond(north));
    }

    /// <summary>The field as columns: height, gust towards east, gust towards north.</summary>
    public (Quantities.Series Height, Quantities.Series East, Quantities.Series North) AsSeries() => (
        new Quantities.Series("Height above ground", "m", Enumerable.Range(0, _eastMps.Length).Select(i => i * StepM).ToArray()),
        new Quantities.Series("Gust towards east", "m/s", [.. _eastMps]),
        new Quantities.Series("Gust towards north", "m/s", [.. _northMps]));

    /// <summary>Gust at a height, straight between grid points, without allocation [m/s].</summary>
    internal void Velocity(double heightM, out double eastMps, out double northMps)
    {
        var along = Math.Clamp(heightM / StepM, 0, _eastMps.Length - 1.000001);
        var i = (int)along;
        var share = along - i;
        eastMps = _eastMps[i] + (share * (_eastMps[i + 1] - _eastMps[i]));
        northMps = _northMps[i] + (share * (_northMps[i + 1] - _northMps[i]));
    }
}
