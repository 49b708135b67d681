using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Findings as boxes that say in words how serious they are.</summary>
internal static class FindingFormatter
{
    public static void Html(IEnumerable<Finding> findings, TextWriter writer)
    {
        foreach (var finding in findings.OrderByDescending(f => f.Severity))
        {
            var (kind, word) = finding.Severity switch
            {
                FindingSeverity.Error => ("nk-error", "Error"),
                FindingSeverity.Warning => ("nk-warning", "Warning"),
                _ => ("nk-remark", "Note"),
            };
            writer.Write($"<div class=\"nk-finding {kind}\"><b>{word}.</b> {Escape.Text(Sentence(finding.Message))}</div>");
        }
    }

    public static void Plain(IEnumerable<Finding> findings, TextWriter writer)
    {
        foreach (var finding in findings.OrderByDescending(f => f.Severity)) writer.WriteLine(finding.ToString());
    }

    // A finding may be part of a longer sentence where it is made; by itself it begins with a capital.
    private static string Sentence(string message) => message.Length == 0 ? message : char.ToUpperInvariant(message[0]) + message[1..];
}
