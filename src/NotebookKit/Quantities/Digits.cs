using System.Globalization;

namespace NotebookKit.Quantities;

/// <summary>Rounds numbers for people: as many digits as an engineer would write, invariant culture, no exponent in everyday
/// ranges.</summary>
public static class Digits
{
    /// <summary>The number with a given count of significant digits.</summary>
    /// <param name="value">Number to show [any unit]; any value.</param>
    /// <param name="significant">Significant digits; 1 to 15.</param>
    public static string Round(double value, int significant = 3)
    {
        if (significant is < 1 or > 15)
            throw new ArgumentOutOfRangeException(nameof(significant), $"significant digits is {significant}; it must be 1 to 15.");
        if (!double.IsFinite(value)) return double.IsNaN(value) ? "not a number" : value > 0 ? "∞" : "−∞";
        if (value == 0) return "0";

        var magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        // Rounding may carry into the next decade (9.996 -> 10.0): look again after it.
        var scale = Math.Pow(10, significant - 1 - magnitude);
        var rounded = double.IsFinite(scale) && scale > 0 ? Math.Round(value * scale) / scale : value;
        // At either end of what a double holds, rounding runs out of it.
        if (!double.IsFinite(rounded) || rounded == 0) rounded = value;
        if (magnitude is < -4 or > 6) return Exponent(rounded, significant);
        magnitude = (int)Math.Floor(Math.Log10(Math.Abs(rounded)));
        var decimals = Math.Clamp(significant - 1 - magnitude, 0, 15);
        var text = rounded.ToString(magnitude >= 4 ? "#,0" : "F" + decimals.ToString(CultureInfo.InvariantCulture), Grouped).Replace('-',
            '−');
        // What was said with fewer digits is shown with fewer: 63 mm stays 63 mm, 63.01 mm becomes 63.0 mm.
        var saidShorter = Math.Abs(value - rounded) <= 1e-12 * Math.Abs(value);
        return saidShorter && text.Contains('.') ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    private static readonly NumberFormatInfo Grouped = new() { NumberGroupSeparator = " ", NumberDecimalSeparator = "." };

    private static string Exponent(double value, int significant)
    {
        var text = value.ToString("E" + (significant - 1).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var mantissa = text[..text.IndexOf('E')];
        var power = int.Parse(text[(text.IndexOf('E') + 1)..], CultureInfo.InvariantCulture);
        return $"{mantissa}×10{Superscript(power)}".Replace('-', '−');
    }

    private static string Superscript(int power) =>
        string.Concat(power.ToString(CultureInfo.InvariantCulture).Select(c => c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹"[c - '0']));
}
