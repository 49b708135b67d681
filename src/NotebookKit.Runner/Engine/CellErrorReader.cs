using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.DotNet.Interactive.Events;

namespace NotebookKit.Runner.Engine;

/// <summary>Reads from a failed cell's events what went wrong and in which line.</summary>
internal static partial class CellErrorReader
{
    /// <summary>The error of a cell that failed.</summary>
    /// <param name="failed">The kernel's closing event.</param>
    /// <param name="events">All events of the cell.</param>
    /// <param name="code">The cell's source.</param>
    public static CellError Read(CommandFailed failed, IEnumerable<KernelEvent> events, string code)
    {
        var diagnostics = events.OfType<DiagnosticsProduced>()
            .SelectMany(d => d.Diagnostics)
            .Where(d => d.Severity == DiagnosticSeverity.Error)
            .DistinctBy(d => (d.Code, d.LinePositionSpan, d.Message))
            .ToList();
        return diagnostics.Count > 0 ? FromDiagnostics(diagnostics, code)
            : failed.Exception is { } exception ? FromException(exception, code)
            : CellError.Plain("Error", failed.Message);
    }

    /// <summary>The error that a thrown exception is.</summary>
    /// <param name="exception">What was thrown.</param>
    /// <param name="code">The cell's source.</param>
    public static CellError FromException(Exception exception, string code)
    {
        var cause = Unwrap(exception);
        var trace = (cause.StackTrace ?? "").Split('\n').Select(l => l.Trim()).Where(IsTheAuthors).ToList();
        var line = LineOf(trace);
        return new CellError(cause.GetType().Name, cause.Message, line, CellError.TextOfLine(code, line), trace.ConvertAll(Readable));
    }

    private static CellError FromDiagnostics(List<Microsoft.DotNet.Interactive.Diagnostic> diagnostics, string code)
    {
        var first = diagnostics[0];
        var line = first.LinePositionSpan.Start.Line + 1;
        var messages = diagnostics.Select(d => string.Create(CultureInfo.InvariantCulture,
            $"line {d.LinePositionSpan.Start.Line + 1}: {d.Message} ({d.Code})"));
        return new CellError(CellError.CompileError, first.Message, line, CellError.TextOfLine(code, line), [.. messages]);
    }

    // What the engine and the scheduler wrap around an exception says nothing to the author.
    private static Exception Unwrap(Exception exception) => exception switch
    {
        AggregateException { InnerExceptions.Count: > 0 } many => Unwrap(many.InnerExceptions[0]),
        TargetInvocationException { InnerException: { } inner } => Unwrap(inner),
        TypeInitializationException { InnerException: { } inner } => Unwrap(inner),
        _ => exception,
    };

    // The running cell is the newest submission on the stack; its innermost frame is the line to point at.
    private static int? LineOf(IReadOnlyList<string> trace)
    {
        var frames = trace.Select(l => Frame().Match(l)).Where(m => m.Success)
            .Select(m => (Submission: Number(m.Groups["submission"]), Line: Number(m.Groups["line"])))
            .ToList();
        if (frames.Count == 0) return null;
        var newest = frames.Max(f => f.Submission);
        return frames.First(f => f.Submission == newest).Line;
    }

    private static int Number(Group group) => int.Parse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    private static bool IsTheAuthors(string line) =>
        line.StartsWith("at ", StringComparison.Ordinal)
        && !line.StartsWith("at Microsoft.CodeAnalysis.", StringComparison.Ordinal)
        && !line.StartsWith("at Microsoft.DotNet.Interactive.", StringComparison.Ordinal)
        && !line.StartsWith("at System.Runtime.", StringComparison.Ordinal);

    // Paths of the machine that built the library are noise; the compiler's names of the cell's own code are too.
    private static string Readable(string line)
    {
        var match = Frame().Match(line);
        if (match.Success) return $"in the cell, line {match.Groups["line"].Value}";
        var path = line.IndexOf(") in ", StringComparison.Ordinal);
        return path < 0 ? line : line[..(path + 1)];
    }

    [GeneratedRegex(@"^at Submission#(?<submission>\d+)\..* in .*:line (?<line>\d+)")]
    private static partial Regex Frame();
}
