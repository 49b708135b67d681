using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.DotNet.Interactive.Events;
using NotebookKit.Charts;
using NotebookKit.Logs;
using NotebookKit.Provenance;
using NotebookKit.Runner.Wording;

namespace NotebookKit.Runner.Engine;

/// <summary>Reads from a failed cell's events what went wrong and in which line.</summary>
internal static partial class CellErrorReader
{
    /// <summary>The error of a cell that failed.</summary>
    /// <param name="failed">The kernel's closing event.</param>
    /// <param name="events">All events of the cell.</param>
    /// <param name="code">The cell's source.</param>
    /// <param name="variables">Names of the session's variables.</param>
    public static CellError Read(CommandFailed failed, IEnumerable<KernelEvent> events, string code, IReadOnlyCollection<string> variables)
    {
        var diagnostics = events.OfType<DiagnosticsProduced>()
            .SelectMany(d => d.Diagnostics)
            .Where(d => d.Severity == DiagnosticSeverity.Error)
            .DistinctBy(d => (d.Code, d.LinePositionSpan, d.Message))
            .ToList();
        return diagnostics.Count > 0 ? FromDiagnostics(diagnostics, code, variables)
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
        // What was asked is wrong, not the code that was asked: the sentence is all that helps.
        return MissingFile.Of(cause) is { } missing ? CellError.At(CellError.Refused, missing, code, line, [])
            : IsRefusal(cause) ? CellError.At(CellError.Refused, ParameterNote().Replace(cause.Message, ""), code, line, [])
            : CellError.At(cause.GetType().Name, cause.Message, code, line, trace.ConvertAll(Readable));
    }

    private static CellError FromDiagnostics(List<Microsoft.DotNet.Interactive.Diagnostic> diagnostics, string code,
        IReadOnlyCollection<string> variables)
    {
        var said = new BuilderWords(code, variables).Of(diagnostics);
        return CellError.At(CellError.CompileError, said[0].Sentence, code, said[0].Line,
            [.. said.Skip(1).Select(s => string.Create(CultureInfo.InvariantCulture, $"line {s.Line}: {s.Sentence}"))]);
    }

    private static readonly Assembly[] Homes =
        [typeof(InvalidDesignException).Assembly, typeof(LogFormatException).Assembly, typeof(EngineeringChart).Assembly];

    // Exceptions of the library's own, and those of the framework that the library words.
    private static bool IsRefusal(Exception exception) =>
        Homes.Contains(exception.GetType().Assembly)
        || (exception is ArgumentException or FormatException && exception.TargetSite?.DeclaringType?.Assembly is { } thrower
            && Homes.Contains(thrower));

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
        var frames = trace.Select(l => Frame().Match(l)).Where(m => m.Success && FileOf(m).Length == 0)
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
        if (match.Success) return $"in {(FileOf(match) is { Length: > 0 } file ? file : "the cell")}, line {match.Groups["line"].Value}";
        var path = line.IndexOf(") in ", StringComparison.Ordinal);
        return path < 0 ? line : line[..(path + 1)];
    }

    // What the framework adds to a sentence of ours.
    [GeneratedRegex(@" \(Parameter '\w*'\)(\s+Actual value was .*)?$", RegexOptions.Singleline)]
    private static partial Regex ParameterNote();

    // A file that the cell loads has lines of its own.
    private static string FileOf(Match frame) =>
        Path.GetFileName(frame.Groups["file"].Value) is var name && name.EndsWith(".csx", StringComparison.Ordinal) ? name : "";

    [GeneratedRegex(@"^at Submission#(?<submission>\d+)\..* in (?<file>.*):line (?<line>\d+)")]
    private static partial Regex Frame();
}
