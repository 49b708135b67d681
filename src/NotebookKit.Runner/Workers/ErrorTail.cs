namespace NotebookKit.Runner.Workers;

/// <summary>Remembers what a worker says on standard error, to tell why it died.</summary>
internal sealed class ErrorTail
{
    // How the runtime begins when it has to end a process.
    private static readonly string[] LastWords = ["Process terminated", "Stack overflow", "Unhandled exception", "Out of memory",
        "Fatal error"];

    private readonly Lock door = new();
    private string? announcement;
    private string last = "";

    /// <summary>Why it died, in a line; empty where it said nothing.</summary>
    public string Summary
    {
        get
        {
            lock (door)
            {
                var text = announcement ?? last;
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
            lock (door)
            {
                if (announcement is not null && last == announcement && !IsTrace(text)) announcement = $"{announcement} {text}";
                else if (announcement is null && Array.Exists(LastWords,
                    w => text.StartsWith(w, StringComparison.Ordinal))) announcement = text;
                last = text;
            }
        }
    }
}
