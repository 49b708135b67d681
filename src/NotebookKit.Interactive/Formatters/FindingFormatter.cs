using NotebookKit.Interactive.Html;
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
            writer.Write($"<div class=\"nk-finding {kind}\"><b>{word}.</b> {Escape.Text(finding.Message)}</div>");
        }
    }

    public static void Plain(IEnumerable<Finding> findings, TextWriter writer)
    {
        foreach (var finding in findings.OrderByDescending(f => f.Severity)) writer.WriteLine(finding.ToString());
    }
}
