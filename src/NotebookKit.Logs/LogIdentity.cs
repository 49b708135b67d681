using System.Globalization;

namespace NotebookKit.Logs;

/// <summary>Reads what a log says of itself in its comment lines: "vessel: Curlew", "serial: C-1", "day: 2026-03-14".</summary>
internal static class LogIdentity
{
    /// <summary>What follows a word and a colon at the start of a comment line; none where no line has it, or nothing follows.</summary>
    public static string? Find(IReadOnlyList<string> comments, string word) =>
        comments.Select(c => c.TrimStart('#', ' '))
            .Where(c => c.StartsWith(word + ":", StringComparison.OrdinalIgnoreCase))
            .Select(c => c[(word.Length + 1)..].Trim())
            .FirstOrDefault(v => v.Length > 0);

    /// <summary>The day; none where no line gives one.</summary>
    public static DateOnly? FindDay(string file, IReadOnlyList<string> comments)
    {
        if (Find(comments, "day") is not { } text) return null;
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new LogFormatException(file, 0, "day", $"the day is \"{text}\"", "write it as year, month and day: 2026-03-14.");
    }
}
