using System.Globalization;

namespace NotebookKit.Runner.Engine;

/// <summary>An error as the lines a notebook shows.</summary>
internal static class ErrorText
{
    /// <summary>What went wrong: a refusal of the library and what the compiler refuses are sentences of their own.</summary>
    /// <param name="error">Error.</param>
    public static string Heading(CellError error) => error.Kind is CellError.Refused or CellError.CompileError ? error.Message
        : $"{error.Kind}: {error.Message}";

    /// <summary>What went wrong, a mark at the line, and the calls that led there.</summary>
    /// <param name="error">Error.</param>
    public static IEnumerable<string> Lines(CellError error)
    {
        yield return Heading(error);
        if (error is { Line: { } line, SourceLine.Length: > 0 })
            yield return string.Create(CultureInfo.InvariantCulture, $"  line {line} > {error.SourceLine}");
        foreach (var call in error.Trace) yield return $"    {call}";
    }
}
