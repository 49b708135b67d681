using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Tells a front-end that runs on Enter whether the code is whole.</summary>
internal static partial class Completeness
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>The answer to an is-complete request.</summary>
    /// <param name="code">Code so far.</param>
    public static JsonObject Answer(string code)
    {
        var tree = CSharpSyntaxTree.ParseText(Command().Replace(code, ""), Script);
        return !SyntaxFactory.IsCompleteSubmission(tree) ? new JsonObject { ["status"] = "incomplete", ["indent"] = IndentAfter(code) }
            : new JsonObject { ["status"] = tree.GetDiagnostics().Any(d => d.Severity == DiagnosticSeverity.Error) ? "invalid"
                : "complete" };
    }

    private static string IndentAfter(string code)
    {
        var last = code.TrimEnd().Split('\n')[^1];
        var indent = last[..^last.TrimStart().Length];
        return last.TrimEnd().EndsWith('{') ? indent + "    " : indent;
    }

    // Commands stand among the lines of a cell; the compiler never sees them.
    [GeneratedRegex(@"^#!.*$", RegexOptions.Multiline)]
    private static partial Regex Command();
}
