using System.Runtime.CompilerServices;

namespace NotebookKit.Flight;

/// <summary>Temperature and pressure against altitude as step loops need them: one lapse below the tropopause, constant temperature above it.</summary>
internal readonly struct AtmosphereLaw
{
    public const double GasConstant = 8314.32 / 28.9644;
    public const double Gravity = 9.80665;
    public const double EarthRadiusM = 6_356_766.0;
    public const double Lapse = 0.0065;
    public const double TropopauseM = 11_000;

    private readonly double _datumM;
    private readonly double _datumTemperatureK;
    private readonly double _datumPressurePa;
    private readonly double _exponent;
    private readonly double _inverseRadius;
    private readonly double _topTemperatureK;
    private readonly double _topPressurePa;

    /// <summary>Creates the law from one known point.</summary>
    /// <param name="datumM">Altitude of the known point [m, as the law counts altitude].</param>
    /// <param name="temperatureK">Temperature there [K].</param>
    /// <param name="pressurePa">Pressure there [Pa].</param>
    /// <param name="gasConstant">Specific gas constant in the pressure law [J/(kg K)].</param>
    /// <param name="countsGeometric">Whether altitudes asked for are turned from geometric into geopotential first.</param>
    public AtmosphereLaw(double datumM, double temperatureK, double pressurePa, double gasConstant, bool countsGeometric)
    {
        SpecificGasConstant = gasConstant;
        _inverseRadius = countsGeometric ? 1 / EarthRadiusM : 0;
        _datumM = datumM / (1 + datumM * _inverseRadius);
        _datumTemperatureK = temperatureK;
        _datumPressurePa = pressurePa;
        _exponent = Gravity / (gasConstant * Lapse);
        _topTemperatureK = temperatureK - Lapse * (TropopauseM - _datumM);
        _topPressurePa = pressurePa * Math.Pow(_topTemperatureK / temperatureK, _exponent);
    }

    public double SpecificGasConstant { get; }

    /// <summary>Pressure [Pa] and temperature [K] at an altitude above sea level [m].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Pressure(double altitudeM, out double temperatureK)
    {
        var h = altitudeM / (1 + altitudeM * _inverseRadius);
        if (h > TropopauseM) return AboveTropopause(h, out temperatureK);
        temperatureK = _datumTemperatureK - Lapse * (h - _datumM);
        return _datumPressurePa * Math.Pow(temperatureK / _datumTemperatureK, _exponent);
    }

    private double AboveTropopause(double h, out double temperatureK)
    {
        temperatureK = _topTemperatureK;
        return _topPressurePa * Math.Exp(-Gravity * (h - TropopauseM) / (SpecificGasConstant * _topTemperatureK));
    }
}
