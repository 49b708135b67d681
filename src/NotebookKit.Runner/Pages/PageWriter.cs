using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Pages;

/// <summary>Writes a notebook that has run as one page that needs nothing but itself.</summary>
internal sealed partial class PageWriter
{
    private readonly Equations _equations = new();

    /// <summary>The whole page.</summary>
    /// <param name="file">Notebook with its outputs.</param>
    /// <param name="answer">What its run came to.</param>
    /// <param name="failure">The cell that failed it; none where it passed.</param>
    public string Write(NotebookFile file, NotebookAnswer answer, CellFailure? failure)
    {
        var contents = new ContentsList();
        var text = new TextCells(Path.GetDirectoryName(Path.GetFullPath(file.Path))!, contents, _equations);
        var outputs = new OutputCells(text, _equations);
        var body = new StringBuilder();
        foreach (var cell in file.Cells)
        {
            body.Append(cell.Kind switch
            {
                CellKind.Markdown => $"<section class=\"text\">{text.ToHtml(cell)}</section>\n",
                CellKind.Raw => $"<pre class=\"raw\">{Escape.Text(cell.Source)}</pre>\n",
                _ => cell.Number == 0 ? "" : Code(cell, failure?.Cell == cell.Number) + outputs.ToHtml(cell),
            });
        }

        var title = NotebookOutline.Of(file).Title;
        var frame = new PageFrame(title);
        return frame.Write(
            $"<main>{Banner(failure)}{Opened(body.ToString(), Opening(answer, failure) + contents.ToHtml())}</main>{Footer}",
            outputs.HasFigures);
    }

    private const string Footer =
        "<footer><p><a href=\"../index.html\">All notebooks</a></p><p>Figures, equations and drawings are inside this file: it needs "
            + "no network. "
        + "Charts are drawn by plotly.js and equations were set by Temml, both under the MIT licence.</p></footer>";

    // A notebook that failed has no answer: what it came to before may rest on what it never reached.
    private static string Opening(NotebookAnswer answer, CellFailure? failure) => failure is null ? AnswerBlock.Section(answer) : "";

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

    private static string Banner(CellFailure? failure) => failure is null ? "" :
        "<div class=\"failure\" role=\"alert\"><p><strong>This notebook did not run to its end.</strong> "
            + $"{Escape.Text(failure.Error.Message)}</p><p>In {Escape.Text(failure.Place)}</p></div>";

    [GeneratedRegex("^<section class=\"text\">\\s*<h1[^>]*>.*?</h1>", RegexOptions.Singleline)]
    private static partial Regex FirstTitle();
}
