using System.Globalization;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Record.Givens;

/// <summary>Values of a record in words.</summary>
internal static class GivenText
{
    /// <summary>With four digits, for reading.</summary>
    public static string Short(object value) => value switch
    {
        IQuantity quantity => quantity.Show(4),
        double number => Digits.Round(number, 4),
        IFormattable number when value is int => number.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };

    /// <summary>A computed value with three digits, or as many more as tell it from its limit: 499.6 m against 500 m.</summary>
    public static string Result(object value, object? limit = null)
    {
        for (var digits = 3; ; digits++)
        {
            var text = Text(value, digits);
            if (limit is null || digits == 9 || Equals(value, limit) || text != Text(limit, digits)) return text;
        }
    }

    private static string Text(object value, int digits) => value switch
    {
        IQuantity quantity => quantity.Show(digits),
        double number => Digits.Round(number, digits),
        GaugePressure gauge => $"{Digits.Round(gauge.Bar, digits)} bar gauge",
        AbsolutePressure absolute => $"{Digits.Round(absolute.Bar, digits)} bar absolute",
        _ => Short(value),
    };

    /// <summary>With every digit, for keeping.</summary>
    public static string Exact(object value) => value switch
    {
        IQuantity quantity => quantity.Show(15),
        GaugePressure gauge => $"{Digits.Round(gauge.Bar, 15)} bar gauge",
        AbsolutePressure absolute => $"{Digits.Round(absolute.Bar, 15)} bar absolute",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        IFormattable number when value is int => number.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };
}
