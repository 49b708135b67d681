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

    /// <summary>An error without a place.</summary>
    /// <param name="kind">Short name of the kind.</param>
    /// <param name="message">The sentence to show.</param>
    public static CellError Plain(string kind, string message) => new(kind, message, null, null, []);

    /// <summary>The text of a line of source, trimmed; none where there is no such line.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="line">Line from 1.</param>
    public static string? TextOfLine(string code, int? line)
    {
        if (line is not > 0) return null;
        var lines = code.Split('\n');
        return line <= lines.Length ? lines[line.Value - 1].Trim() : null;
    }
}
