using System.Globalization;

namespace NotebookKit.Logs;

/// <summary>Numbers as loggers write them, read where they stand.</summary>
internal static class CellNumber
{
    // With 15 digits and ten powers that a double holds exactly, one division rounds as a full reader would.
    private const int ExactDigits = 15;

    private static readonly double[] Tens = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    private static readonly string[] NoReading =
        ["NAN", "N/A", "NA", "NULL", "NONE", "-", "--", "---", "INF", "+INF", "-INF", "INFINITY", "-INFINITY", "∞", "ERR", "ERROR",
            "OVF", "OL", "OVERLOAD", "?", "#N/A"];

    /// <summary>Reads a number with a decimal mark, point unless told otherwise.</summary>
    public static bool TryRead(ReadOnlySpan<char> cell, char mark, out double value)
    {
        long digits = 0;
        int count = 0, decimals = -1, i = 0;
        var negative = false;
        if (cell.Length > 0 && cell[0] is '-' or '+')
        {
            negative = cell[0] == '-';
            i = 1;
        }

        for (; i < cell.Length; i++)
        {
            var c = cell[i];
            if (char.IsAsciiDigit(c))
            {
                digits = 10 * digits + (c - '0');
                if (++count > ExactDigits) return Full(cell, mark, out value);
                if (decimals >= 0) decimals++;
            }
            else if (c == mark && decimals < 0)
            {
                decimals = 0;
            }
            else
            {
                return Full(cell, mark, out value);
            }
        }

        value = digits / Tens[Math.Max(0, decimals)];
        if (negative) value = -value;
        return count > 0;
    }

    /// <summary>Whether a cell is a logger's way to say that there was no reading.</summary>
    public static bool IsNoReading(ReadOnlySpan<char> cell)
    {
        foreach (var word in NoReading)
            if (cell.Equals(word, StringComparison.OrdinalIgnoreCase)) return true;
        return false;
    }

    private static bool Full(ReadOnlySpan<char> cell, char mark, out double value)
    {
        value = 0;
        if (cell.Length > 400) return false;
        Span<char> plain = stackalloc char[cell.Length];
        for (var i = 0; i < cell.Length; i++)
        {
            // A minus sign as it is printed.
            var c = cell[i] == '−' ? '-' : cell[i];
            if (c == mark) c = '.';
            else if (c is '.' or ',') return false;
            plain[i] = c;
        }

        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }
}
