using System.Globalization;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Record;

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
