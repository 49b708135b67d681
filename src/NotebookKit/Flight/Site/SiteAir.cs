using System.Runtime.CompilerServices;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Site;

/// <summary>The air over a launch site, with its wind. Below the end of the rail the wind is taken as at the end of the rail.</summary>
internal readonly struct SiteAir : IAir
{
    private const double HeatCapacityRatio = StandardConstants.AirHeatCapacityRatio;

    private readonly AtmosphereLaw _law;
    private readonly double _elevationM;
    private readonly double _lowestM;
    private readonly WindProfile _wind;
    private readonly GustField? _gusts;
    private readonly double _factorCos;
    private readonly double _factorSin;

    /// <summary>The air over a site.</summary>
    /// <param name="law">Temperature and pressure against altitude.</param>
    /// <param name="elevationM">Altitude of the pad [m].</param>
    /// <param name="wind">Wind against height.</param>
    /// <param name="lowestM">Height below which the wind stays the same [m].</param>
    /// <param name="gusts">Gusts on top of it, where there are any.</param>
    /// <param name="windFactor">Factor on the wind's speed [-].</param>
    /// <param name="windTurn">Turn of the wind, clockwise seen from above [rad].</param>
    public SiteAir(AtmosphereLaw law, double elevationM, WindProfile wind, double lowestM, GustField? gusts = null, double windFactor = 1,
        double windTurn = 0)
    {
        _law = law;
        _elevationM = elevationM;
        _wind = wind;
        _gusts = gusts;
        _lowestM = lowestM;
        _factorCos = windFactor * Math.Cos(windTurn);
        _factorSin = windFactor * Math.Sin(windTurn);
    }

    public double ElevationM => _elevationM;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public AirSample At(double t, double altitudeM)
    {
        var pressure = _law.Pressure(altitudeM, out var temperature);
        var density = pressure / (_law.SpecificGasConstant * temperature);
        var height = Math.Max(_lowestM, altitudeM - _elevationM);
        _wind.Velocity(height, out var east, out var north);
        if (_gusts is not null)
        {
            _gusts.Velocity(height, out var gustEast, out var gustNorth);
            (east, north) = (east + gustEast, north + gustNorth);
        }

        return new(density, Math.Sqrt(HeatCapacityRatio * _law.SpecificGasConstant * temperature), pressure,
            new((_factorCos * north) - (_factorSin * east), (_factorCos * east) + (_factorSin * north), 0));
    }

    /// <summary>How fast the density's logarithm falls with height [1/m], for finding the maximum dynamic pressure.</summary>
    public double DensityFall(double altitudeM)
    {
        _law.Pressure(altitudeM, out var temperature);
        return (StandardConstants.Gravity / (_law.SpecificGasConstant * temperature)) - (AtmosphereLaw.Lapse / temperature);
    }
}
