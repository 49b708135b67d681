using System.Collections.Frozen;
using System.Text.RegularExpressions;
using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.Materials.Files;

/// <summary>Reads "4.6 GPa", "400 tex", "12 oz/yd²" as a user writes them in a file. A bare number is refused: the unit is the half of it
/// that kills.</summary>
internal static partial class QuantityText
{
    /// <summary>Units taken for each quantity, as they are written.</summary>
    private static readonly FrozenDictionary<Type, string[]> Units = new Dictionary<Type, string[]>
    {
        [typeof(Pressure)] = ["Pa", "kPa", "MPa", "GPa", "N/mm²", "N/mm2", "bar", "psi", "ksi", "Msi"],
        [typeof(Density)] = ["kg/m³", "kg/m3", "g/cm³", "g/cm3", "lb/in³", "lb/in3"],
        [typeof(AreaDensity)] = ["g/m²", "g/m2", "gsm", "oz/yd²", "oz/yd2"],
        [typeof(LinearDensity)] = ["tex", "g/km", "g/m"],
        [typeof(Length)] = ["µm", "um", "mm", "cm", "m", "in", "ft"],
        [typeof(Mass)] = ["g", "kg", "oz", "lb"],
        [typeof(Duration)] = ["s", "min", "h"],
        [typeof(Angle)] = ["°", "deg", "rad"],
        [typeof(Ratio)] = ["%"],
        [typeof(Temperature)] = ["°C", "C", "K", "°F"],
        [typeof(CoefficientOfThermalExpansion)] = ["1/K", "ppm/K", "µm/(m·K)"],
    }.ToFrozenDictionary();

    /// <summary>Reads a quantity, or says what is wrong with the text.</summary>
    public static bool TryRead<T>(string text, out T value, out string wrong) where T : struct
    {
        value = default;
        var match = Parts().Match(text.Trim());
        if (!match.Success || UnitText.Number(match.Groups[1].Value) is not { } number || match.Groups[2].Value.StartsWith(','))
        {
            wrong = $"\"{text}\" isn't a number{(typeof(T) == typeof(double) ? "" : " with a unit")}; write a decimal point, no "
                + $"comma{Example<T>()}";
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
            wrong = $"\"{text}\" has no unit; write one of {string.Join(", ", known)}{Example<T>()}";
            return false;
        }

        if (known.Contains(unit, StringComparer.Ordinal))
        {
            value = (T)UnitText.Of(typeof(T), number, unit)!;
            wrong = "";
            return true;
        }

        wrong = $"\"{unit}\" in \"{text}\" isn't a unit taken here; write one of {string.Join(", ", known)}";
        return false;
    }

    private static string Example<T>() => Units.TryGetValue(typeof(T), out var known) ? $", for example \"12.5 {known[0]}\"" : "";

    [GeneratedRegex(@"^([-+]?[0-9.eE+-]*[0-9.])\s*(.*)$")]
    private static partial Regex Parts();
}
