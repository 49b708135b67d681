using System.Runtime.CompilerServices;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Site;

/// <summary>Temperature and pressure against altitude as step loops need them: one lapse below the tropopause, constant temperature above
/// it.</summary>
internal readonly struct AtmosphereLaw
{
    public const double GasConstant = 8314.32 / 28.9644;
    public const double EarthRadiusM = 6_356_766.0;
    public const double Lapse = 0.0065;
    public const double TropopauseM = 11_000;

    private const double LongestSeries = 0.04;

    private readonly double _datumM;
    private readonly double _datumTemperatureK;
    private readonly double _datumPressurePa;
    private readonly double _exponent;
    private readonly double _inverseRadius;
    private readonly double _lapseShare;
    private readonly double _b2, _b3, _b4, _b5, _b6, _b7, _b8;
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
        _exponent = StandardConstants.Gravity / (gasConstant * Lapse);
        _lapseShare = Lapse / temperatureK;

        // Binomial series of (1 − x)^n for the few hundred metres that flights go through; up to x = 0.04, 1.8 km, it is good to rounding.
        var n = _exponent;
        _b2 = -(n - 1) / 2;
        _b3 = _b2 * -(n - 2) / 3;
        _b4 = _b3 * -(n - 3) / 4;
        _b5 = _b4 * -(n - 4) / 5;
        _b6 = _b5 * -(n - 5) / 6;
        _b7 = _b6 * -(n - 6) / 7;
        _b8 = _b7 * -(n - 7) / 8;
        _topTemperatureK = temperatureK - Lapse * (TropopauseM - _datumM);
        _topPressurePa = pressurePa * Math.Pow(_topTemperatureK / temperatureK, _exponent);
    }

    public double SpecificGasConstant { get; }

    /// <summary>Pressure [Pa] and temperature [K] at an altitude above sea level [m].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Pressure(double altitudeM, out double temperatureK)
    {
        // A law that counts geopotential altitudes has nothing to turn, and waits for no division.
        var h = _inverseRadius == 0 ? altitudeM : altitudeM / (1 + altitudeM * _inverseRadius);
        if (h > TropopauseM) return AboveTropopause(h, out temperatureK);
        temperatureK = _datumTemperatureK - Lapse * (h - _datumM);
        var x = (h - _datumM) * _lapseShare;
        if (x is > LongestSeries or < -LongestSeries) return _datumPressurePa * Math.Pow(1 - x, _exponent);
        var series = _b2 + x * (_b3 + x * (_b4 + x * (_b5 + x * (_b6 + x * (_b7 + x * _b8)))));
        return _datumPressurePa * (1 - _exponent * x * (1 + x * series));
    }

    private double AboveTropopause(double h, out double temperatureK)
    {
        temperatureK = _topTemperatureK;
        return _topPressurePa * Math.Exp(-StandardConstants.Gravity * (h - TropopauseM) / (SpecificGasConstant * _topTemperatureK));
    }
}
