namespace NotebookKit.Logs;

/// <summary>Reads days, clock times and stamps where they stand. Source: ISO 8601 for stamps; other forms as loggers write them.</summary>
internal static class ClockText
{
    public const double DaySeconds = 86_400;

    /// <summary>A stamp of day and clock: 2026-03-14T10:02:11.5+01:00; zone in minutes before universal time, none where there is
    /// none.</summary>
    public static bool Stamp(ReadOnlySpan<char> text, bool? dayFirst, out int day, out double seconds, out int? zone)
    {
        (day, seconds, zone) = (0, 0, null);
        var cut = text.IndexOfAny('T', ' ');
        if (cut < 6 || !Day(text[..cut], dayFirst, out day)) return false;
        var clock = text[(cut + 1)..].Trim();
        var sign = clock.LastIndexOfAny("+-Z");
        if (sign > 0)
        {
            if (!Zone(clock[sign..], out var minutes)) return false;
            zone = minutes;
            clock = clock[..sign].TrimEnd();
        }
        else if (clock.EndsWith("UTC", StringComparison.Ordinal))
        {
            zone = 0;
            clock = clock[..^3].TrimEnd();
        }

        return Clock(clock, out seconds);
    }

    /// <summary>A time of day, or time since a start: 10:02:11.25, also with AM and PM.</summary>
    public static bool Clock(ReadOnlySpan<char> text, out double seconds)
    {
        seconds = 0;
        int? half = null;
        if (text.EndsWith("AM", StringComparison.OrdinalIgnoreCase)) half = 0;
        if (text.EndsWith("PM", StringComparison.OrdinalIgnoreCase)) half = 12;
        if (half is not null) text = text[..^2].TrimEnd();
        var first = text.IndexOf(':');
        if (first is < 1 or > 4) return false;
        var second = text[(first + 1)..].IndexOf(':');
        if (second is < 1 or > 2) return false;
        second += first + 1;
        var rest = text[(second + 1)..];
        var mark = rest.Contains(',') ? ',' : '.';
        if (!Whole(text[..first], out var hours) || !Whole(text[(first + 1)..second], out var minutes) || minutes > 59
            || rest.Length is 0 or > 16 || !char.IsAsciiDigit(rest[0]) || !CellNumber.TryRead(rest, mark, out seconds) || seconds >= 61)
            return false;
        if (half is { } later)
        {
            if (hours is < 1 or > 12) return false;
            hours = hours % 12 + later;
        }

        seconds += 3600.0 * hours + 60.0 * minutes;
        return true;
    }

    /// <summary>A day as a number: 2026-03-14, 2026/03/14, 14.03.2026; with strokes only where it can be read in one way.</summary>
    public static bool Day(ReadOnlySpan<char> text, bool? dayFirst, out int day)
    {
        day = 0;
        var first = text.IndexOfAny("-/.");
        if (first is < 1 or > 4) return false;
        var mark = text[first];
        var second = text[(first + 1)..].IndexOf(mark);
        if (second is < 1 or > 2) return false;
        second += first + 1;
        if (!Whole(text[..first], out var a) || !Whole(text[(first + 1)..second], out var b)
            || !Whole(text[(second + 1)..], out var c)) return false;
        int year, month, dayOfMonth;
        if (first == 4) (year, month, dayOfMonth) = (a, b, c);
        else if (text.Length - second - 1 != 4) return false;
        else if (mark == '.' || dayFirst == true || (dayFirst is null && a > 12)) (dayOfMonth, month, year) = (a, b, c);
        else if (dayFirst == false || b > 12) (month, dayOfMonth, year) = (a, b, c);
        else return false;
        if (year is < 1900 or > 2200 || month is < 1 or > 12 || dayOfMonth < 1 || dayOfMonth > 31) return false;
        if (dayOfMonth > DateTime.DaysInMonth(year, month)) return false;
        day = new DateOnly(year, month, dayOfMonth).DayNumber;
        return true;
    }

    /// <summary>An offset: Z, +02:00, +0200, +02; in minutes.</summary>
    public static bool Zone(ReadOnlySpan<char> text, out int minutes)
    {
        minutes = 0;
        if (text is "Z") return true;
        if (text.Length is not (3 or 5 or 6) || text[0] is not ('+' or '-') || !Whole(text[1..3], out var hours)) return false;
        var rest = text.Length == 6 && text[3] == ':' ? text[4..] : text.Length == 6 ? "x" : text[3..];
        if (rest.Length > 0 && !Whole(rest, out minutes)) return false;
        if (hours > 14 || minutes > 59) return false;
        minutes += 60 * hours;
        if (text[0] == '-') minutes = -minutes;
        return true;
    }

    private static bool Whole(ReadOnlySpan<char> text, out int value)
    {
        value = 0;
        if (text.Length is 0 or > 4) return false;
        foreach (var c in text)
        {
            if (!char.IsAsciiDigit(c)) return false;
            value = 10 * value + (c - '0');
        }

        return true;
    }
}
