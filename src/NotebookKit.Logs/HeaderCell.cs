namespace NotebookKit.Logs;

/// <summary>A cell of a header: the name of a column, and the unit that stands with it.</summary>
/// <param name="Text">The whole cell.</param>
/// <param name="Name">The column's name.</param>
/// <param name="UnitText">The unit as written; none where there is none.</param>
/// <param name="Bracketed">Whether the unit stands in brackets, as against behind a stroke or a line in the name.</param>
internal sealed record HeaderCell(string Text, string Name, string? UnitText, bool Bracketed)
{
    private const int LongestName = 200;

    private static readonly string[] ClockNames = ["TIME", "TIMESTAMP", "DATETIME", "DATE TIME", "DATE AND TIME", "CLOCK", "T", "ELAPSED",
        "ELAPSED TIME", "TIME STAMP", "TIME OF DAY", "RUNTIME", "SECONDS", "MILLIS", "UTC", "LOCAL TIME"];

    // A column that is called after a unit of time; an h may be a height.
    private static readonly string[] TimeUnits = ["ms", "s", "min", "µs", "us", "sec", "msec", "secs"];

    /// <summary>Whether the whole cell is a unit of time.</summary>
    public bool IsUnitOfTime => TimeUnits.Contains(Text);

    /// <summary>Whether only its letter says that it holds the time; it may be a temperature as well.</summary>
    public bool IsClockByLetter => Bare == "T";

    /// <summary>Whether a column of this name holds the time.</summary>
    public bool IsClockByName => ClockNames.Contains(Bare);

    /// <summary>Whether a column of this name holds the day.</summary>
    public bool IsDayByName => Bare is "DATE" or "DAY";

    private string Bare => Name.ToUpperInvariant().Replace('_', ' ').Trim();

    /// <summary>Reads a cell: "pressure [bar gauge]", "P1 (psi)", "pressure_psi", "Alt/ft".</summary>
    public static HeaderCell Of(ReadOnlySpan<char> cell)
    {
        var text = cell.Trim().ToString();
        if (text.Length > LongestName) return new(text, Excerpt.Of(text), null, false);
        if (TimeUnits.Contains(text)) return new(text, text, text, false);
        if (text.Length > 2 && text[^1] is ']' or ')')
        {
            var open = text.LastIndexOf(text[^1] == ']' ? '[' : '(');
            if (open >= 0)
            {
                string name = text[..open].Trim(), unit = text[(open + 1)..^1].Trim();
                // "P1 psi (gauge)": the bracket holds what the pressure is read against, and the unit stands before it.
                if (LogUnit.Reference(unit) is { } word && unit.Length > 1 && Of(name) is { UnitText: { } before } inner)
                    return inner with { Text = text, UnitText = $"{before} {word}" };
                return new(text, name, Referenced(name, unit), true);
            }
        }

        // The longest that is a unit: of "speed m/s" that is "m/s" and not "s".
        for (var at = 1; at < text.Length - 1; at++)
        {
            if (!"/,:_ ".Contains(text[at])) continue;
            var unit = text[(at + 1)..].Trim();
            if (unit.Length is 0 or > 20 || unit is "-" || LogUnit.Find(unit, out _, needsReference: false) is null) continue;
            var name = text[..at].Trim().TrimEnd('_', ',', '/');
            return new(text, name, Referenced(name, unit), false);
        }

        return new(text, text, null, false);
    }

    /// <summary>Whether a mapping's word means this column.</summary>
    public bool Means(string header) => Same(Text, header) || Same(Name, header);

    // "Pressure (gauge) [psi]", "gauge pressure [bar]": what it is read against may stand in the name.
    private static string Referenced(string name, string unit)
    {
        if (unit.Length > 20 || LogUnit.Find(unit, out _, needsReference: false) is not { Kind: "pressure" }) return unit;
        foreach (var word in name.Split([' ', '(', ')', '_'], StringSplitOptions.RemoveEmptyEntries))
            if (word.Length > 2 && LogUnit.Reference(word) is { } reference) return $"{unit} {reference}";
        return unit;
    }

    private static bool Same(string a, string b) => string.Equals(a, b.Trim(), StringComparison.OrdinalIgnoreCase);
}
