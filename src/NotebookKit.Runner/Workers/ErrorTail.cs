namespace NotebookKit.Runner.Workers;

/// <summary>Remembers what a worker says on standard error, to tell why it died.</summary>
internal sealed class ErrorTail
{
    // How the runtime begins when it has to end a process.
    private static readonly string[] LastWords = ["Process terminated", "Stack overflow", "Unhandled exception", "Out of memory",
        "Fatal error"];

    private readonly Lock _door = new();
    private string? _announcement;
    private string _last = "";

    /// <summary>Why it died, in a line; empty where it said nothing.</summary>
    public string Summary
    {
        get
        {
            lock (_door)
            {
                var text = _announcement ?? _last;
                return text.Length > 300 ? text[..300] : text;
            }
        }
    }

    private static bool IsTrace(string text) =>
        text.StartsWith("at ", StringComparison.Ordinal) || text.StartsWith("Repeat", StringComparison.Ordinal)
            || text.StartsWith("---", StringComparison.Ordinal);

    /// <summary>Reads to the end.</summary>
    /// <param name="error">The worker's standard error.</param>
    public async Task ReadAsync(TextReader error)
    {
        while (await error.ReadLineAsync() is { } line)
        {
            var text = line.Trim();
            if (text.Length == 0) continue;
            lock (_door)
            {
                if (_announcement is not null && _last == _announcement && !IsTrace(text)) _announcement = $"{_announcement} {text}";
                else if (_announcement is null && Array.Exists(LastWords,
                    w => text.StartsWith(w, StringComparison.Ordinal))) _announcement = text;
                _last = text;
            }
        }
    }
}
