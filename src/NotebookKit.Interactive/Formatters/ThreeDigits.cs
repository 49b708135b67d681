using System.Globalization;
using System.Text.RegularExpressions;

namespace NotebookKit.Interactive.Formatters;

/// <summary>A main number with the three digits that every table shows it with.</summary>
internal static partial class ThreeDigits
{
    /// <summary>
    /// The text with its leading decimal number at three digits. One that ends in a lone 5 after them stays: it was rounded once already,
    /// and rounded twice it might contradict the table.
    /// </summary>
    public static string Of(string text)
    {
        var found = Leading().Match(text);
        if (!found.Success) return text;
        var digits = found.Groups["number"].Value.Replace(".", "", StringComparison.Ordinal).TrimStart('0');
        if (digits.Length <= 3 || digits[3..].TrimEnd('0') == "5") return text;
        var value = decimal.Parse(found.Groups["number"].Value, CultureInfo.InvariantCulture);
        // Rounding may carry into the next decade: 9.996 is 10.0.
        var rounded = Math.Round(value, Places(value));
        return found.Groups["sign"].Value
            + rounded.ToString("F" + Places(rounded).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            + text[found.Length..];
    }

    private static int Places(decimal value)
    {
        var places = 2;
        for (; value >= 10 && places > 0; value /= 10) places--;
        for (; value is > 0 and < 1; value *= 10) places++;
        return places;
    }

    [GeneratedRegex(@"^(?<sign>[−-]?)(?<number>[0-9]{1,15}\.[0-9]{1,12})(?![0-9.])")]
    private static partial Regex Leading();
}
