using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Pages;

/// <summary>Writes a notebook that has run as a page: of a folder that shares the chart library, or one that needs nothing but
/// itself.</summary>
/// <param name="single">Whether each page needs nothing but itself.</param>
/// <param name="library">Where the live page lies, seen from a page; none where there is none.</param>
internal sealed partial class PageWriter(bool single = false, string? library = null)
{
    // An explorer that the library can answer says so in its data.
    private const string ExplorerOfDesign = "\"base\":{\"model\":";

    private readonly Equations _equations = new();

    /// <summary>The whole page.</summary>
    /// <param name="file">Notebook with its outputs.</param>
    /// <param name="answer">What its run came to.</param>
    /// <param name="failures">The cells that failed it; none where it passed.</param>
    /// <param name="notComputed">How many code cells weren't run.</param>
    /// <param name="around">What lies around the page.</param>
    public WrittenPage Write(NotebookFile file, NotebookAnswer answer, IReadOnlyList<CellFailure> failures, int notComputed,
        PageSurroundings around)
    {
        var contents = new ContentsList();
        var text = new TextCells(Path.GetDirectoryName(Path.GetFullPath(file.Path))!, contents, _equations, around.HasPage);
        var outputs = new OutputCells(text, _equations);
        var body = new StringBuilder();
        foreach (var cell in file.Cells)
        {
            body.Append(cell.Kind switch
            {
                CellKind.Markdown => $"<section class=\"text\">{text.ToHtml(cell)}</section>\n",
                CellKind.Raw => $"<pre class=\"raw\">{Escape.Text(cell.Source)}</pre>\n",
                _ => cell.Number == 0 ? "" : Code(cell, failures.Any(f => f.Cell == cell.Number)) + outputs.ToHtml(cell),
            });
        }

        var title = NotebookOutline.Of(file).Title;
        var frame = new PageFrame(title);
        var html = frame.Write(
            $"<main>{Banner(failures, NotComputedText.Of(notComputed, file.CodeCells.Count()))}"
            + Opened(body.ToString(), AnswerBlock.Section(failures.Count == 0 ? answer : answer.OfFailed, outputs.Places)
                + contents.ToHtml())
            + $"{around.ToHtml()}</main>{Footer}",
            outputs.HasFigures,
            single,
            !single && body.ToString().Contains(ExplorerOfDesign, StringComparison.Ordinal) ? library : null);
        return new WrittenPage(html, outputs.Places);
    }

    private const string Footer =
        "<footer><p><a href=\"../index.html\">All lessons</a></p><p>This page needs no network. Charts are drawn by plotly.js "
            + "and equations were set by Temml, both under the MIT licence; the font of equations is a subset of TeX Gyre Pagella Math "
            + "(GUST Font License).</p></footer>";

    // The answer stands between the title and everything else; above the text where that begins without a title.
    private static string Opened(string body, string opening)
    {
        var at = FirstTitle().Match(body) is { Success: true } title ? title.Length : 0;
        return at == 0 ? opening + body : body[..at] + opening + body[at..];
    }

    private static string Code(NotebookCell cell, bool failed) => string.Create(
        CultureInfo.InvariantCulture,
        $"<details class=\"code\" id=\"cell-{cell.Number}\"{(failed ? " open" : "")}><summary>Code [{cell.Number}]</summary>")
        + $"<pre><code>{CodeColouring.ToHtml(cell.Source.TrimEnd())}</code></pre></details>\n";

    private static string Banner(IReadOnlyList<CellFailure> failures, string missing) => failures.Count == 0 ? "" :
        $"<div class=\"failure\" role=\"alert\"><p><strong>Not everything on this page was computed.</strong> {missing}</p>"
            + string.Concat(failures.Select(f => $"<p>{Escape.Text(f.Error.Message)}<br>In {Link(f)}</p>")) + "</div>";

    private static string Link(CellFailure failure) => failure.Cell == 0 ? Escape.Text(failure.Place) : string.Create(
        CultureInfo.InvariantCulture, $"<a href=\"#cell-{failure.Cell}\">{Escape.Text(failure.Place)}</a>");

    [GeneratedRegex("^<section class=\"text\">\\s*<h1[^>]*>.*?</h1>", RegexOptions.Singleline)]
    private static partial Regex FirstTitle();
}
