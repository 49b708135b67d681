using System.Globalization;
using System.Text.RegularExpressions;
using NotebookKit.Quantities;

namespace NotebookKit.Clearance.Designs;

/// <summary>One value of a design that a sweep goes through.</summary>
/// <param name="Name">Its path or plain name: "fill pressure", "vessel.plies.1".</param>
/// <param name="Values">What it is to be, as a file would have it; 1 to 1000.</param>
public sealed partial record SweepAxis(string Name, IReadOnlyList<string> Values)
{
    private const int MostValues = 1000;

    /// <summary>The values as they are shown: those of a range with as few digits, three at least, as keep them apart; a list as it was
    /// written. What is computed with is <see cref="Values"/>.</summary>
    public IReadOnlyList<string> Labels { get; private init; } = Values;

    /// <summary>Reads "fill pressure=20..60 bar gauge/9" (nine values from 20 to 60), or "throat=11 mm; 13 mm; 15 mm".</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="FormatException">It is neither.</exception>
    public static SweepAxis Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var cut = text.IndexOf('=', StringComparison.Ordinal);
        var (name, values) = cut < 0 ? ("", "") : (text[..cut].Trim(), text[(cut + 1)..].Trim());
        if (name.Length == 0 || values.Length == 0 || text.Length > 10_000)
            throw new FormatException(ClearanceFindings.NoSweep(text));
        if (Uncounted().Match(values) is { Success: true } open)
            throw new FormatException(ClearanceFindings.SweepHasNoCount(text, open.Groups["range"].Value.Trim()));
        if (Range().Match(values) is not { Success: true } range)
        {
            string[] listed = [.. values.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Distinct(StringComparer.Ordinal)];
            return listed.Length is > 0 and <= MostValues ? new(name, listed) : throw new FormatException(ClearanceFindings.NoSweep(text));
        }

        var (from, to) = (Number(range, "from"), Number(range, "to"));
        if (!int.TryParse(range.Groups["count"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            || count is < 2 or > MostValues) throw new FormatException(ClearanceFindings.SweepCount(text, range.Groups["count"].Value,
                MostValues));
        if (from == to) throw new FormatException(ClearanceFindings.SweepStandsStill(text));
        // "30..10" is the same set of values as "10..30": a table and a chart run upward.
        (from, to) = (Math.Min(from, to), Math.Max(from, to));
        var unit = range.Groups["unit"].Value.Trim();
        double[] numbers = [.. Enumerable.Range(0, count).Select(i => Math.Round(from + ((to - from) * i / (count - 1)), 10))];
        return new(name, [.. numbers.Select(n => $"{n.ToString(CultureInfo.InvariantCulture)} {unit}".TrimEnd())])
        {
            Labels = [.. Short(numbers).Select(n => $"{n} {unit}".TrimEnd())],
        };
    }

    // 20.3838383838 is shown as 20.4 while no neighbour is.
    private static string[] Short(double[] numbers)
    {
        for (var digits = 3; ; digits++)
        {
            string[] shown = [.. numbers.Select(n => Digits.Round(n, digits))];
            if (digits == 12 || shown.Distinct(StringComparer.Ordinal).Count() == numbers.Distinct().Count()) return shown;
        }
    }

    private static double Number(Match range, string group) => double.Parse(range.Groups[group].Value, NumberStyles.Float,
        CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<from>-?\d+(\.\d+)?)\s*\.\.\s*(?<to>-?\d+(\.\d+)?)\s*(?<unit>[^/;\d][^/;]*)?/\s*(?<count>\d+)$")]
    private static partial Regex Range();

    [GeneratedRegex(@"^(?<range>-?\d+(\.\d+)?\s*\.\.\s*-?\d+(\.\d+)?\s*([^/;\d][^/;]*)?)/?\s*$")]
    private static partial Regex Uncounted();
}
