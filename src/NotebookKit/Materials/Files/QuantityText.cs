using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Files;

/// <summary>Reads "4.6 GPa", "400 tex", "12 oz/yd²" as a user writes them in a file. A bare number is refused: the unit is the half of it that kills.</summary>
internal static partial class QuantityText
{
    /// <summary>Units taken for each quantity, as they are written, with what one of them is.</summary>
    private static readonly FrozenDictionary<Type, (string Unit, Func<double, object> Make)[]> Units = new Dictionary<Type, (string Unit, Func<double, object> Make)[]>
    {
        [typeof(Pressure)] =
        [
            ("Pa", v => Pressure.FromPascals(v)), ("kPa", v => Pressure.FromKilopascals(v)), ("MPa", v => Pressure.FromMegapascals(v)), ("GPa", v => Pressure.FromGigapascals(v)),
            ("N/mm²", v => Pressure.FromMegapascals(v)), ("N/mm2", v => Pressure.FromMegapascals(v)), ("bar", v => Pressure.FromBars(v)), ("psi", v => Pressure.FromPoundsForcePerSquareInch(v)),
            ("ksi", v => Pressure.FromKilopoundsForcePerSquareInch(v)), ("Msi", v => Pressure.FromKilopoundsForcePerSquareInch(1000 * v)),
        ],
        [typeof(Density)] =
        [
            ("kg/m³", v => Density.FromKilogramsPerCubicMeter(v)), ("kg/m3", v => Density.FromKilogramsPerCubicMeter(v)),
            ("g/cm³", v => Density.FromGramsPerCubicCentimeter(v)), ("g/cm3", v => Density.FromGramsPerCubicCentimeter(v)),
            ("lb/in³", v => Density.FromPoundsPerCubicInch(v)), ("lb/in3", v => Density.FromPoundsPerCubicInch(v)),
        ],
        [typeof(AreaDensity)] =
        [
            ("g/m²", v => AreaDensity.FromGramsPerSquareMeter(v)), ("g/m2", v => AreaDensity.FromGramsPerSquareMeter(v)), ("gsm", v => AreaDensity.FromGramsPerSquareMeter(v)),
            // One ounce is 28.349523125 g, one yard 0.9144 m, both exact (NIST SP 811, 2008).
            ("oz/yd²", v => AreaDensity.FromGramsPerSquareMeter(v * 28.349523125 / (0.9144 * 0.9144))), ("oz/yd2", v => AreaDensity.FromGramsPerSquareMeter(v * 28.349523125 / (0.9144 * 0.9144))),
        ],
        [typeof(LinearDensity)] =
        [
            ("tex", v => v.Tex()), ("g/km", v => v.Tex()), ("g/m", v => LinearDensity.FromGramsPerMeter(v)),
        ],
        [typeof(Length)] =
        [
            ("µm", v => Length.FromMicrometers(v)), ("um", v => Length.FromMicrometers(v)), ("mm", v => Length.FromMillimeters(v)), ("cm", v => Length.FromCentimeters(v)),
            ("m", v => Length.FromMeters(v)), ("in", v => Length.FromInches(v)), ("ft", v => Length.FromFeet(v)),
        ],
        [typeof(Mass)] = [("g", v => Mass.FromGrams(v)), ("kg", v => Mass.FromKilograms(v)), ("oz", v => Mass.FromOunces(v)), ("lb", v => Mass.FromPounds(v))],
        [typeof(Duration)] =
        [
            ("s", v => Duration.FromSeconds(v)), ("min", v => Duration.FromMinutes(v)), ("h", v => Duration.FromHours(v)),
        ],
        [typeof(Angle)] = [("°", v => Angle.FromDegrees(v)), ("deg", v => Angle.FromDegrees(v)), ("rad", v => Angle.FromRadians(v))],
        [typeof(Ratio)] = [("%", v => Ratio.FromPercent(v))],
        [typeof(Temperature)] = [("°C", v => Temperature.FromDegreesCelsius(v)), ("C", v => Temperature.FromDegreesCelsius(v)), ("K", v => Temperature.FromKelvins(v)), ("°F", v => Temperature.FromDegreesFahrenheit(v))],
        [typeof(CoefficientOfThermalExpansion)] =
        [
            ("1/K", v => CoefficientOfThermalExpansion.FromPerKelvin(v)), ("ppm/K", v => CoefficientOfThermalExpansion.FromPerKelvin(v * 1e-6)), ("µm/(m·K)", v => CoefficientOfThermalExpansion.FromPerKelvin(v * 1e-6)),
        ],
    }.ToFrozenDictionary();

    /// <summary>Reads a quantity, or says what is wrong with the text.</summary>
    public static bool TryRead<T>(string text, out T value, out string wrong) where T : struct
    {
        value = default;
        var match = Parts().Match(text.Trim());
        if (!match.Success || !double.TryParse(match.Groups[1].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number)
            || match.Groups[2].Value.StartsWith(','))
        {
            wrong = $"\"{text}\" isn't a number{(typeof(T) == typeof(double) ? "" : " with a unit")}; write a decimal point, no comma{Example<T>()}";
            return false;
        }

        var unit = match.Groups[2].Value;
        if (typeof(T) == typeof(double))
        {
            wrong = unit.Length == 0 ? "" : $"\"{text}\" has a unit, but this is a plain number";
            value = (T)(object)number;
            return unit.Length == 0;
        }

        var known = Units[typeof(T)];
        if (unit.Length == 0)
        {
            wrong = $"\"{text}\" has no unit; write one of {string.Join(", ", known.Select(k => k.Unit))}{Example<T>()}";
            return false;
        }

        foreach (var (name, make) in known)
        {
            if (!string.Equals(name, unit, StringComparison.Ordinal)) continue;
            value = (T)make(number);
            wrong = "";
            return true;
        }

        wrong = $"\"{unit}\" in \"{text}\" isn't a unit taken here; write one of {string.Join(", ", known.Select(k => k.Unit))}";
        return false;
    }

    private static string Example<T>() => Units.TryGetValue(typeof(T), out var known) ? $", for example \"12.5 {known[0].Unit}\"" : "";

    [GeneratedRegex(@"^([-+]?[0-9.eE+-]*[0-9.])\s*(.*)$")]
    private static partial Regex Parts();
}
