using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>The U.S. Standard Atmosphere of 1976 from 5 km below sea level to 30 km.</summary>
/// <remarks>
/// Altitude is geometric; the tables' layers are geopotential, H = r₀ Z / (r₀ + Z), which differs by 19 m at 11 km.
/// Source: NOAA, NASA, USAF, U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, eqs 18, 23, 33, 42, 50, 51.
/// </remarks>
public static class StandardAtmosphere
{
    private const double StratosphereLapse = 0.001, StratosphereBaseM = 20_000;

    private static readonly AtmosphereLaw Lower =
        new(0, StandardConstants.SeaLevelTemperatureK, StandardConstants.SeaLevelPressurePa, AtmosphereLaw.GasConstant,
            countsGeometric: true);

    /// <summary>Altitudes it holds for: −5 km to 30 km.</summary>
    public static ValidRange<Length> Altitudes { get; } = new((-5000).Metres(), 30_000.Metres());

    /// <summary>The source of the model.</summary>
    public static Source Source { get; } = new("NOAA, NASA, USAF", "U.S. Standard Atmosphere, NOAA-S/T 76-1562", 1976,
        "eqs 18, 23, 33, 42, 50, 51", SourceKind.Standard);

    /// <summary>The air at a geometric altitude. Source: eqs 18 to 51.</summary>
    /// <param name="altitude">Geometric altitude above mean sea level; −5 km to 30 km.</param>
    /// <exception cref="OutOfRangeException">The altitude is outside.</exception>
    public static AirConditions At(Length altitude)
    {
        Altitudes.Check(altitude, "altitude above sea level",
            "The standard atmosphere is coded for this range only; a club vehicle stays far inside it.");
        var pressurePa = PressureAt(altitude.Meters, out var temperatureK);
        return new(AbsolutePressure.FromPascals(pressurePa), temperatureK.Kelvins());
    }

    /// <summary>Geopotential altitude, the one that constant gravity would give the same energy at. Source: eq. 18.</summary>
    /// <param name="altitude">Geometric altitude above mean sea level; −5 km to 30 km.</param>
    public static Length Geopotential(Length altitude) =>
        (AtmosphereLaw.EarthRadiusM * altitude.Meters / (AtmosphereLaw.EarthRadiusM + altitude.Meters)).Metres();

    internal static double PressureAt(double altitudeM, out double temperatureK)
    {
        var h = altitudeM / (1 + altitudeM / AtmosphereLaw.EarthRadiusM);
        if (h <= StratosphereBaseM) return Lower.Pressure(altitudeM, out temperatureK);

        var atBase = Lower.Pressure(StratosphereBaseM / (1 - StratosphereBaseM / AtmosphereLaw.EarthRadiusM), out var baseTemperature);
        temperatureK = baseTemperature + StratosphereLapse * (h - StratosphereBaseM);
        return atBase * Math.Pow(baseTemperature / temperatureK,
            StandardConstants.Gravity / (AtmosphereLaw.GasConstant * StratosphereLapse));
    }

}
