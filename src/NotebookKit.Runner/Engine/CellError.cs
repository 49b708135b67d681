namespace NotebookKit.Runner.Engine;

/// <summary>What stopped a cell, said so that its author finds the place.</summary>
/// <param name="Kind">Short name of the kind: an exception's type, or "CompileError".</param>
/// <param name="Message">The sentence to show.</param>
/// <param name="Line">Line in the cell, from 1; none where it isn't known.</param>
/// <param name="SourceLine">Text of that line, trimmed.</param>
/// <param name="Trace">The calls that led there, innermost first, without the engine's own.</param>
internal sealed record CellError(string Kind, string Message, int? Line, string? SourceLine, IReadOnlyList<string> Trace)
{
    /// <summary>The kind of a cell that wasn't run because it doesn't compile.</summary>
    public const string CompileError = "CompileError";

    /// <summary>The kind of a cell that asked the library for something it refuses.</summary>
    public const string Refused = "Refused";

    /// <summary>An error without a place.</summary>
    /// <param name="kind">Short name of the kind.</param>
    /// <param name="message">The sentence to show.</param>
    public static CellError Plain(string kind, string message) => new(kind, message, null, null, []);

    /// <summary>An error at a line; at the line before where that one is empty, and without a place where the cell has no such
    /// line.</summary>
    /// <param name="kind">Short name of the kind.</param>
    /// <param name="message">The sentence to show.</param>
    /// <param name="code">The cell's source.</param>
    /// <param name="line">Line from 1; none where it isn't known.</param>
    /// <param name="trace">The calls that led there, or what else is wrong.</param>
    public static CellError At(string kind, string message, string code, int? line, IReadOnlyList<string> trace)
    {
        var lines = code.Split('\n');
        var at = line is > 0 && line <= lines.Length ? line.Value : 0;
        while (at > 0 && string.IsNullOrWhiteSpace(lines[at - 1])) at--;
        return at == 0 ? new(kind, message, null, null, trace) : new(kind, message, at, lines[at - 1].Trim(), trace);
    }
}
