using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>Which air a flight goes through.</summary>
/// <remarks>Source: U.S. Standard Atmosphere, 1976 (temperature lapse, hydrostatic pressure), with the day's own ground readings where
/// given.</remarks>
public sealed record Atmosphere
{
    private readonly AtmosphereLaw _law;

    private Atmosphere(string name, Source source, AtmosphereLaw law)
    {
        Name = name;
        Source = source;
        _law = law;
    }

    /// <summary>The standard atmosphere of 1976, altitudes taken as geometric. Source: U.S. Standard Atmosphere, 1976.</summary>
    public static Atmosphere Standard { get; } = new(
        "U.S. Standard Atmosphere 1976", StandardAtmosphere.Source,
        new(0, StandardConstants.SeaLevelTemperatureK, StandardConstants.SeaLevelPressurePa, AtmosphereLaw.GasConstant,
            countsGeometric: true));

    /// <summary>
    /// The standard troposphere with altitude taken as geopotential as it stands: temperature falls by 6.5 K/km, p by the power law,
    /// R that of dry air.
    /// Simpler by 1 part in 6000 of altitude. Source: International Standard Atmosphere, ISO 2533:1975, troposphere.
    /// </summary>
    public static Atmosphere LinearLapse { get; } = new(
        "linear lapse (ISO 2533 troposphere, altitude as geopotential)",
        new Source("ISO", "2533 Standard Atmosphere", 1975, "troposphere", SourceKind.Standard),
        new(0, StandardConstants.SeaLevelTemperatureK, StandardConstants.SeaLevelPressurePa, StandardConstants.DryAirGas,
            countsGeometric: false));

    /// <summary>Name of the model.</summary>
    public string Name { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    internal AtmosphereLaw Law => _law;

    /// <summary>The air of the day: the standard lapse of 6.5 K/km hung on the temperature and pressure read at the ground.</summary>
    /// <param name="elevation">Where they were read, above mean sea level; −500 m to 6000 m.</param>
    /// <param name="temperature">Air temperature there; −40 °C to 55 °C.</param>
    /// <param name="pressure">Air pressure there, as a barometer shows it unreduced; 0.4 to 1.1 bar absolute.</param>
    /// <exception cref="OutOfRangeException">A reading is outside.</exception>
    public static Atmosphere OfTheDay(Length elevation, Temperature temperature, AbsolutePressure pressure)
    {
        new ValidRange<Length>((-500).Metres(), 6000.Metres()).Check(elevation, "elevation of the ground readings",
            "It is counted from mean sea level.");
        new ValidRange<Temperature>((-40).Celsius(), 55.Celsius()).Check(temperature, "air temperature at the ground",
            "Check the thermometer's unit.");
        new ValidRange<AbsolutePressure>(0.4.BarAbsolute(), 1.1.BarAbsolute()).Check(
            pressure, "air pressure at the ground", "Give the barometer's own reading, not the one reduced to sea level.");
        return new(
            $"standard lapse from {temperature.Show()} and {pressure} at {elevation.Show()}", StandardAtmosphere.Source,
            new(elevation.Meters, temperature.Kelvins, pressure.Pascals, AtmosphereLaw.GasConstant, countsGeometric: true));
    }

    /// <summary>The air at an altitude. Source: see the model's own source.</summary>
    /// <param name="altitude">Altitude above mean sea level; −500 m to 20 km.</param>
    /// <exception cref="OutOfRangeException">The altitude is outside.</exception>
    public AirConditions At(Length altitude)
    {
        new ValidRange<Length>((-500).Metres(), 20_000.Metres()).Check(altitude, "altitude above sea level",
            "The model holds for flights of clubs only.");
        var pressurePa = _law.Pressure(altitude.Meters, out var temperatureK);
        return new(AbsolutePressure.FromPascals(pressurePa), temperatureK.Kelvins());
    }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
