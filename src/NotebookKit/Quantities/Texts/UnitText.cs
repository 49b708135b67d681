using System.Collections.Frozen;
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

    /// <summary>The trade's names that UnitsNet doesn't read.</summary>
    private static readonly FrozenDictionary<(Type, string), Func<double, IQuantity>> Own = new Dictionary<(Type, string), Func<double,
        IQuantity>>
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
    }.ToFrozenDictionary();

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
