using System.Globalization;
using UnitsNet;

namespace NotebookKit.Quantities.Texts;

/// <summary>
/// Numbers and units as people write them: "66 mm", "36 bar gauge", "12 oz/yd²". Whoever reads a text (a file of materials, a given of a
/// notebook, the header of a log) says which units may stand there and what to answer where one doesn't; what a unit means is told here
/// alone.
/// </summary>
internal static class UnitText
{
    public const string Gauge = "gauge";
    public const string Absolute = "absolute";

    /// <summary>The trade's names that UnitsNet doesn't read, and the units that files have most often: to ask UnitsNet for one makes it
    /// set up every quantity that it knows, which takes longer than to read a design.</summary>
    private static readonly IReadOnlyDictionary<(Type, string), Func<double, IQuantity>> Own = new Dictionary<(Type, string),
        Func<double, IQuantity>>
    {
        [(typeof(Pressure), "N/mm2")] = v => Pressure.FromMegapascals(v),
        [(typeof(Pressure), "N/mm²")] = v => Pressure.FromMegapascals(v),
        [(typeof(Pressure), "Msi")] = v => Pressure.FromKilopoundsForcePerSquareInch(1000 * v),
        [(typeof(Density), "kg/m3")] = v => Density.FromKilogramsPerCubicMeter(v),
        [(typeof(Density), "g/cm3")] = v => Density.FromGramsPerCubicCentimeter(v),
        [(typeof(Density), "lb/in3")] = v => Density.FromPoundsPerCubicInch(v),
        [(typeof(AreaDensity), "g/m2")] = v => AreaDensity.FromGramsPerSquareMeter(v),
        [(typeof(AreaDensity), "gsm")] = v => AreaDensity.FromGramsPerSquareMeter(v),
        [(typeof(AreaDensity), "oz/yd²")] = v => OuncesPerSquareYard(v),
        [(typeof(AreaDensity), "oz/yd2")] = v => OuncesPerSquareYard(v),
        [(typeof(LinearDensity), "tex")] = v => v.Tex(),
        [(typeof(LinearDensity), "g/km")] = v => v.Tex(),
        [(typeof(Length), "um")] = v => Length.FromMicrometers(v),
        [(typeof(Temperature), "C")] = v => Temperature.FromDegreesCelsius(v),
        [(typeof(Temperature), "degC")] = v => Temperature.FromDegreesCelsius(v),
        [(typeof(Volume), "mL")] = v => Volume.FromMilliliters(v),
        [(typeof(Volume), "L")] = v => Volume.FromLiters(v),
        [(typeof(Ratio), "-")] = v => Ratio.FromDecimalFractions(v),
        [(typeof(CoefficientOfThermalExpansion), "1/K")] = v => CoefficientOfThermalExpansion.FromPerKelvin(v),
        [(typeof(CoefficientOfThermalExpansion), "ppm/K")] = v => CoefficientOfThermalExpansion.FromPerKelvin(v * 1e-6),
        [(typeof(CoefficientOfThermalExpansion), "µm/(m·K)")] = v => CoefficientOfThermalExpansion.FromPerKelvin(v * 1e-6),
        [(typeof(Length), "µm")] = v => Length.FromMicrometers(v),
        [(typeof(Length), "mm")] = v => Length.FromMillimeters(v),
        [(typeof(Length), "cm")] = v => Length.FromCentimeters(v),
        [(typeof(Length), "m")] = v => Length.FromMeters(v),
        [(typeof(Length), "km")] = v => Length.FromKilometers(v),
        [(typeof(Length), "in")] = v => Length.FromInches(v),
        [(typeof(Length), "ft")] = v => Length.FromFeet(v),
        [(typeof(Mass), "g")] = v => Mass.FromGrams(v),
        [(typeof(Mass), "kg")] = v => Mass.FromKilograms(v),
        [(typeof(Mass), "oz")] = v => Mass.FromOunces(v),
        [(typeof(Mass), "lb")] = v => Mass.FromPounds(v),
        [(typeof(Pressure), "Pa")] = v => Pressure.FromPascals(v),
        [(typeof(Pressure), "hPa")] = v => Pressure.FromHectopascals(v),
        [(typeof(Pressure), "kPa")] = v => Pressure.FromKilopascals(v),
        [(typeof(Pressure), "MPa")] = v => Pressure.FromMegapascals(v),
        [(typeof(Pressure), "GPa")] = v => Pressure.FromGigapascals(v),
        [(typeof(Pressure), "bar")] = v => Pressure.FromBars(v),
        [(typeof(Pressure), "psi")] = v => Pressure.FromPoundsForcePerSquareInch(v),
        [(typeof(Pressure), "ksi")] = v => Pressure.FromKilopoundsForcePerSquareInch(v),
        [(typeof(Pressure), "mbar")] = v => Pressure.FromMillibars(v),
        [(typeof(Pressure), "inHg")] = v => Pressure.FromInchesOfMercury(v),
        [(typeof(Pressure), "mmHg")] = v => Pressure.FromMillimetersOfMercury(v),
        [(typeof(Pressure), "atm")] = v => Pressure.FromAtmospheres(v),
        [(typeof(Pressure), "kgf/cm²")] = v => Pressure.FromKilogramsForcePerSquareCentimeter(v),
        [(typeof(Acceleration), "m/s²")] = v => Acceleration.FromMetersPerSecondSquared(v),
        [(typeof(Duration), "µs")] = v => Duration.FromMicroseconds(v),
        [(typeof(Angle), "°")] = v => Angle.FromDegrees(v),
        [(typeof(Angle), "deg")] = v => Angle.FromDegrees(v),
        [(typeof(Angle), "rad")] = v => Angle.FromRadians(v),
        [(typeof(Ratio), "%")] = v => Ratio.FromPercent(v),
        [(typeof(Temperature), "°C")] = v => Temperature.FromDegreesCelsius(v),
        [(typeof(Temperature), "K")] = v => Temperature.FromKelvins(v),
        [(typeof(Temperature), "°F")] = v => Temperature.FromDegreesFahrenheit(v),
        [(typeof(Duration), "ms")] = v => Duration.FromMilliseconds(v),
        [(typeof(Duration), "s")] = v => Duration.FromSeconds(v),
        [(typeof(Duration), "min")] = v => Duration.FromMinutes(v),
        [(typeof(Duration), "h")] = v => Duration.FromHours(v),
        [(typeof(Speed), "m/s")] = v => Speed.FromMetersPerSecond(v),
        [(typeof(Speed), "km/h")] = v => Speed.FromKilometersPerHour(v),
        [(typeof(Speed), "mph")] = v => Speed.FromMilesPerHour(v),
        [(typeof(Speed), "kn")] = v => Speed.FromKnots(v),
        [(typeof(Speed), "ft/s")] = v => Speed.FromFeetPerSecond(v),
        [(typeof(Volume), "cm³")] = v => Volume.FromCubicCentimeters(v),
        [(typeof(Volume), "m³")] = v => Volume.FromCubicMeters(v),
        [(typeof(Volume), "in³")] = v => Volume.FromCubicInches(v),
        [(typeof(Density), "kg/m³")] = v => Density.FromKilogramsPerCubicMeter(v),
        [(typeof(Density), "g/cm³")] = v => Density.FromGramsPerCubicCentimeter(v),
        [(typeof(Density), "lb/in³")] = v => Density.FromPoundsPerCubicInch(v),
        [(typeof(AreaDensity), "g/m²")] = v => AreaDensity.FromGramsPerSquareMeter(v),
        [(typeof(AreaDensity), "kg/m²")] = v => AreaDensity.FromKilogramsPerSquareMeter(v),
        [(typeof(LinearDensity), "g/m")] = v => LinearDensity.FromGramsPerMeter(v),
        [(typeof(LinearDensity), "kg/m")] = v => LinearDensity.FromKilogramsPerMeter(v),
        [(typeof(Force), "N")] = v => Force.FromNewtons(v),
        [(typeof(Force), "kN")] = v => Force.FromKilonewtons(v),
        [(typeof(Force), "lbf")] = v => Force.FromPoundsForce(v),
        [(typeof(Force), "kgf")] = v => Force.FromKilogramsForce(v),
        [(typeof(ForcePerLength), "N/m")] = v => ForcePerLength.FromNewtonsPerMeter(v),
        [(typeof(ForcePerLength), "N/mm")] = v => ForcePerLength.FromNewtonsPerMillimeter(v),
        [(typeof(Irradiance), "W/m²")] = v => Irradiance.FromWattsPerSquareMeter(v),
        [(typeof(Irradiance), "kW/m²")] = v => Irradiance.FromKilowattsPerSquareMeter(v),
    };

    /// <summary>Quantities and units that are read without UnitsNet's own names, for the test that holds both against each other.</summary>
    internal static IEnumerable<(Type Quantity, string Unit)> Known => Own.Keys;

    /// <summary>A finite number with a decimal point; nothing where the text isn't one.</summary>
    public static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;

    /// <summary>"36 bar" of "36 bar gauge"; nothing where the text doesn't end in the word.</summary>
    public static string? Without(string text, string word) =>
        text.EndsWith(" " + word, StringComparison.OrdinalIgnoreCase) ? text[..^(word.Length + 1)].TrimEnd() : null;

    /// <summary>So much of a unit; nothing where the name is none of this quantity.</summary>
    public static IQuantity? Of(Type quantity, double number, string unit) => Maker(quantity, unit)?.Invoke(number);

    /// <summary>What makes so much of a unit; nothing where the name is none of this quantity.</summary>
    public static Func<double, IQuantity>? Maker(Type quantity, string unit)
    {
        if (Own.TryGetValue((quantity, unit), out var make)) return make;
        var units = Quantity.Infos.First(i => i.ValueType == quantity).UnitType;
        return UnitParser.Default.TryParse(unit, units, CultureInfo.InvariantCulture, out var found) ? v => Quantity.From(v, found) : null;
    }

    /// <summary>Number and unit in one; nothing where the text is none of this quantity, or its unit is missing.</summary>
    // A ratio's number alone would be read as a fraction; 32 was likely meant as 32 %.
    public static IQuantity? Read(Type quantity, string text) =>
        Number(text) is null && Quantity.TryParse(CultureInfo.InvariantCulture, quantity, text, out var found)
            && double.IsFinite((double)found.Value)
            ? found
            : null;

    /// <summary>From one unit to another of the same quantity. A power of ten stays exact: 4100 ms are 4.1 s.</summary>
    public static Func<double, double> Converter(Type quantity, string from, string to)
    {
        var unit = Of(quantity, 0, to)!.Unit;
        double Convert(double number) => Of(quantity, number, from)!.As(unit);
        var (zero, factor) = (Convert(0), Convert(1));
        if (zero != 0) return Convert;
        if (IsWhole(factor)) return v => v * Math.Round(factor);
        return IsWhole(1 / factor) ? v => v / Math.Round(1 / factor) : Convert;
    }

    private static bool IsWhole(double factor) => factor > 0.5 && Math.Abs(factor - Math.Round(factor)) < 1e-12 * factor;

    // One ounce is 28.349523125 g, one yard 0.9144 m, both exact (NIST SP 811, 2008).
    private static AreaDensity OuncesPerSquareYard(double ounces)
        => AreaDensity.FromGramsPerSquareMeter(ounces * 28.349523125 / (0.9144 * 0.9144));
}
