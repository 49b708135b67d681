using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>
/// What a log doesn't say of itself: which column is which, in which unit, and how its numbers are written. Given in the call, or in a file
/// beside the log whose name is the log's with ".columns.json" behind it; what the call gives goes before the file. What neither gives is
/// guessed, and a finding says so.
/// </summary>
public sealed record LogMapping
{
    /// <summary>The clock: seconds, or stamps.</summary>
    public LogColumn? Time { get; init; }

    /// <summary>The day, where it has a column of its own beside the clock's.</summary>
    public LogColumn? Day { get; init; }

    /// <summary>The pressure.</summary>
    public LogColumn? Pressure { get; init; }

    /// <summary>The temperature.</summary>
    public LogColumn? Temperature { get; init; }

    /// <summary>The water that went in.</summary>
    public LogColumn? Expansion { get; init; }

    /// <summary>The height of an altimeter that logs heights.</summary>
    public LogColumn? Height { get; init; }

    /// <summary>The reading of a scale.</summary>
    public LogColumn? Mass { get; init; }

    /// <summary>The reading of a load cell.</summary>
    public LogColumn? Force { get; init; }

    /// <summary>What parts the columns: ",", ";" or "tab"; the header shows it unless given.</summary>
    public string? Separator { get; init; }

    /// <summary>Whether decimals are written with a comma; the first number that has one shows it unless given.</summary>
    public bool? DecimalComma { get; init; }

    /// <summary>Whether days with strokes have the day of the month first: 14/03/2026; needed only where a day could be read both
    /// ways.</summary>
    public bool? DayFirst { get; init; }

    /// <summary>By how much the log's clock is before universal time, where its stamps don't say: 2 h in central European summer.</summary>
    public Duration? UtcOffset { get; init; }

    /// <summary>Which stretch of a log whose clock was reset; the first is 1.</summary>
    public int? Part { get; init; }

    /// <summary>What logged heights are counted from.</summary>
    public HeightDatum? HeightAbove { get; init; }

    /// <summary>Pressure of the air around, which a log of absolute pressure is read against.</summary>
    public AbsolutePressure? Ambient { get; init; }

    /// <summary>This mapping, and another's where this one gives nothing.</summary>
    internal LogMapping Over(LogMapping file) => new()
    {
        Time = Time ?? file.Time,
        Day = Day ?? file.Day,
        Pressure = Pressure ?? file.Pressure,
        Temperature = Temperature ?? file.Temperature,
        Expansion = Expansion ?? file.Expansion,
        Height = Height ?? file.Height,
        Mass = Mass ?? file.Mass,
        Force = Force ?? file.Force,
        Separator = Separator ?? file.Separator,
        DecimalComma = DecimalComma ?? file.DecimalComma,
        DayFirst = DayFirst ?? file.DayFirst,
        UtcOffset = UtcOffset ?? file.UtcOffset,
        Part = Part ?? file.Part,
        HeightAbove = HeightAbove ?? file.HeightAbove,
        Ambient = Ambient ?? file.Ambient,
    };

    /// <summary>The columns that are given, by what they are.</summary>
    internal IEnumerable<(string Role, LogColumn Column)> Given =>
        new[]
        {
            ("pressure", Pressure), ("temperature", Temperature), ("expansion", Expansion), ("height", Height), ("mass", Mass),
            ("force", Force),
        }.Where(c => c.Item2 is not null).Select(c => (c.Item1, c.Item2!));
}

/// <summary>What a height is counted from.</summary>
public enum HeightDatum
{
    /// <summary>The launch pad.</summary>
    Pad,

    /// <summary>Mean sea level.</summary>
    SeaLevel,
}
