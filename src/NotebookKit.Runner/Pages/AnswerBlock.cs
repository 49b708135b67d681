using System.Globalization;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Record;
using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Pages;

/// <summary>What a notebook comes to, for the head of its page and for the index.</summary>
internal static class AnswerBlock
{
    private const int AtOnce = 5;

    /// <summary>Decisions, what changed and main numbers for the index; empty where there are none.</summary>
    /// <param name="answer">What the notebook's own run came to.</param>
    public static string ForIndex(NotebookAnswer answer) =>
        Verdicts(answer.Verdicts) + RequirementBlock.Lines(answer) + Numbers(answer.Numbers);

    /// <summary>The same, with the requirements in full, as the part of a page that comes before its first cell.</summary>
    /// <param name="answer">What the notebook's own run came to.</param>
    public static string Section(NotebookAnswer answer) =>
        Verdicts(answer.Verdicts) + RequirementBlock.Tables(answer) + Numbers(answer.Numbers) is { Length: > 0 } html
        ? $"<section class=\"answer\" aria-label=\"{Label(answer)}\"><p class=\"label\">{Label(answer)}</p>{html}</section>\n"
        : "";

    // A notebook that failed gives none.
    private static string Label(NotebookAnswer answer) =>
        answer.Verdicts.Count + answer.Numbers.Count > 0 ? "Answer" : "Requirements and givens";

    private static string Verdicts(IReadOnlyList<MainVerdict> verdicts) => string.Concat(verdicts.Select(v =>
        $"<p class=\"verdict {(v.Holds ? "holds" : "fails")}\"><strong>{Escape.Text(v.Words)}</strong> <span>{Escape.Text(v.Subject)}."
        + $"{(v.Remark.Length > 0 ? " " + Escape.Text(v.Remark) : "")}</span></p>"));

    private static string Numbers(IReadOnlyList<Headline> numbers)
    {
        if (numbers.Count == 0) return "";
        var rest = numbers.Count - AtOnce;
        return List(numbers.Take(AtOnce)) + (rest <= 0 ? "" : string.Create(
            CultureInfo.InvariantCulture, $"<details class=\"more\"><summary>{rest} more</summary>{List(numbers.Skip(AtOnce))}</details>"));
    }

    private static string List(IEnumerable<Headline> numbers)
    {
        using var html = new StringWriter(CultureInfo.InvariantCulture);
        HeadlineFormatter.Html(numbers, html);
        return html.ToString();
    }
}
