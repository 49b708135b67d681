using System.Globalization;
using System.Text;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Pages;

/// <summary>Writes a notebook that has run as one page that needs nothing but itself.</summary>
internal sealed class PageWriter
{
    private readonly Equations equations = new();

    /// <summary>The whole page.</summary>
    /// <param name="file">Notebook with its outputs.</param>
    /// <param name="failure">The cell that failed it; none where it passed.</param>
    public string Write(NotebookFile file, CellFailure? failure)
    {
        var contents = new ContentsList();
        var text = new TextCells(Path.GetDirectoryName(Path.GetFullPath(file.Path))!, contents, equations);
        var outputs = new OutputCells(text, equations);
        var body = new StringBuilder();
        foreach (var cell in file.Cells)
        {
            body.Append(cell.Kind switch
            {
                CellKind.Markdown => $"<section class=\"text\">{text.ToHtml(cell)}</section>\n",
                CellKind.Raw => $"<pre class=\"raw\">{Escape.Html(cell.Source)}</pre>\n",
                _ => cell.Number == 0 ? "" : Code(cell) + outputs.ToHtml(cell),
            });
        }

        var title = NotebookOutline.Of(file).Title;
        var frame = new PageFrame(title);
        return frame.Write(
            $"{contents.ToHtml()}<main>{Banner(failure)}{body}</main>{Footer}",
            outputs.HasFigures);
    }

    private const string Footer =
        "<footer><p><a href=\"../index.html\">All notebooks</a></p><p>Figures, equations and drawings are inside this file: it needs no network. "
        + "Charts are drawn by plotly.js and equations were set by Temml, both under the MIT licence.</p></footer>";

    private static string Code(NotebookCell cell) => string.Create(
        CultureInfo.InvariantCulture,
        $"<details class=\"code\" id=\"cell-{cell.Number}\" open><summary>[{cell.Number}] code</summary><pre><code>{CodeColouring.ToHtml(cell.Source.TrimEnd())}</code></pre></details>\n");

    private static string Banner(CellFailure? failure) => failure is null ? "" :
        $"<div class=\"failure\" role=\"alert\"><p><strong>This notebook did not run to its end.</strong> {Escape.Html(failure.Error.Message)}</p><p>In {Escape.Html(failure.Place)}</p></div>";
}
