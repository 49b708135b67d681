using System.Globalization;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Record;
using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Pages;

/// <summary>What a notebook comes to, for the head of its page and for the index.</summary>
internal static class AnswerBlock
{
    private const int AtOnce = 5;

    /// <summary>Decisions and what changed, without numbers; empty where there are none.</summary>
    /// <param name="answer">What the notebook's own run came to.</param>
    public static string Decisions(NotebookAnswer answer) => Verdicts(answer.Verdicts) + RequirementBlock.Lines(answer);

    /// <summary>Decisions, what changed and main numbers for the index; empty where there are none.</summary>
    /// <param name="answer">What the notebook's own run came to.</param>
    public static string ForIndex(NotebookAnswer answer) =>
        Verdicts(answer.Verdicts) + RequirementBlock.Lines(answer) + Numbers(answer.Numbers);

    /// <summary>Decision, main numbers and a picture, with the requirements below, as the part of a page that comes before its first
    /// cell.</summary>
    /// <param name="answer">What the notebook's own run came to.</param>
    /// <param name="places">Knows the page's picture.</param>
    public static string Section(NotebookAnswer answer, PagePlaces places) =>
        Verdicts(answer.Verdicts) + Numbers(answer.Numbers) + RequirementBlock.Tables(answer) is { Length: > 0 } html
        ? $"<section class=\"answer\" aria-label=\"{Label(answer)}\"><p class=\"label\">{Label(answer)}</p>{Beside(places)}{html}"
            + "</section>\n"
        : "";

    /// <summary>The page's picture, as wide as the page; empty where it has none.</summary>
    /// <param name="places">Knows it.</param>
    public static string Picture(PagePlaces places) => places.Picture.Length == 0 ? "" : "<picture><source "
        + $"media=\"(max-width: 600px)\" srcset=\"{places.NarrowPicture}\">{Image(places, places.Picture)}</picture>";

    private static string Image(PagePlaces places, string source) =>
        $"<img class=\"picture {(places.IsDrawing ? "drawing" : "still")}\" src=\"{source}\" "
            + $"alt=\"{Escape.Text(places.PictureWords.Trim())}\">";

    // Beside the numbers there is no room for the wide form.
    private static string Beside(PagePlaces places) => places.NarrowPicture.Length == 0 ? "" : Image(places, places.NarrowPicture);

    // A notebook that failed gives none.
    private static string Label(NotebookAnswer answer) =>
        answer.Verdicts.Count + answer.Numbers.Count > 0 ? "Answer" : "Requirements and givens";

    private static string Verdicts(IReadOnlyList<MainVerdict> verdicts) => string.Concat(verdicts.OrderByDescending(IsCard).Select(v =>
        $"<p class=\"verdict {(v.Holds ? "holds" : "fails")}\"><strong>{Escape.Text(v.Words)}</strong> <span>{Escape.Text(v.Subject)}."
        + $"{(v.Remark.Length > 0 ? " " + Escape.Text(v.Remark) : "")}</span></p>"));

    // What a reader came for stands first.
    private static bool IsCard(MainVerdict verdict) => verdict.Words is "GO" or "NO-GO";

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
