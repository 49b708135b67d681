using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Evidence;

/// <summary>Height from the pressure an altimeter reads.</summary>
/// <remarks>
/// Air in balance whose temperature falls by 6.5 K a kilometre from that of the day at the pad: h = T₀/L · [1 − (p/p₀)^(R L/g)].
/// A day with another lapse moves heights by a few parts in a thousand. Source: U.S. Standard Atmosphere, 1976, eq. 33a, solved for height.
/// </remarks>
public static class PressureHeight
{
    /// <summary>Height above the pad. Source: U.S. Standard Atmosphere, 1976, eq. 33a.</summary>
    /// <param name="reading">Pressure read; 0.2 to 1.2 bar absolute.</param>
    /// <param name="atPad">Pressure at the pad; 0.5 to 1.2 bar absolute.</param>
    /// <param name="temperature">Temperature of the air at the pad; −40 to 60 °C.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Length Above(AbsolutePressure reading, AbsolutePressure atPad, Temperature temperature)
    {
        new ValidRange<AbsolutePressure>(0.2.BarAbsolute(), 1.2.BarAbsolute()).Check(reading, "pressure read",
            "An altimeter of a club flight reads 0.8 to 1.05 bar.");
        new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Check(atPad, "pressure at the pad",
            "Take the readings before launch.");
        new ValidRange<Temperature>((-40).Celsius(), 60.Celsius()).Check(temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius),
            "temperature at the pad", "Read it in the shade.");
        return Length.FromMeters(Metres(reading.Pascals / atPad.Pascals, temperature.Kelvins));
    }

    internal static Source Source => StandardAtmosphere.Source;

    internal static double Metres(double pressureRatio, double kelvins) =>
        kelvins / AtmosphereLaw.Lapse
        * (1 - Math.Pow(pressureRatio, StandardConstants.DryAirGas * AtmosphereLaw.Lapse / StandardConstants.Gravity));

    internal static double Ratio(double metres, double kelvins) => Math.Pow(1 - AtmosphereLaw.Lapse * metres / kelvins,
        StandardConstants.Gravity / (StandardConstants.DryAirGas * AtmosphereLaw.Lapse));
}
