using System.Globalization;

namespace NotebookKit.Runner.Engine;

/// <summary>An error as the lines a notebook shows.</summary>
internal static class ErrorText
{
    /// <summary>What went wrong, a mark at the line, and the calls that led there.</summary>
    /// <param name="error">Error.</param>
    public static IEnumerable<string> Lines(CellError error)
    {
        yield return $"{error.Kind}: {error.Message}";
        if (error.Line is { } line) yield return string.Create(CultureInfo.InvariantCulture, $"  line {line} > {error.SourceLine}");
        foreach (var call in error.Trace) yield return $"    {call}";
    }
}
