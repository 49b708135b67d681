using System.Security.Cryptography;
using System.Text;
using NotebookKit.Charts;
using NotebookKit.Charts.Explorers;
using NotebookKit.Interactive;

namespace NotebookKit.Runner.Pages;

/// <summary>
/// The outer html of every page. Its policy line forbids the browser any request but that for the chart library beside the page, and any
/// script but ours: known by their hashes or, for a file, by a word that follows from the page's own body and so can't stand in it.
/// </summary>
/// <param name="title">Title of the page, plain text.</param>
internal sealed class PageFrame(string title)
{
    /// <summary>The chart library that the pages of one folder share, beside them.</summary>
    public const string LibraryFile = "plotly.min.js";

    /// <summary>The font of equations that the pages of one folder share, beside them.</summary>
    public const string FontFile = "maths.css";

    /// <summary>The whole page.</summary>
    /// <param name="body">Html of the body.</param>
    /// <param name="hasCharts">Whether the page needs the chart library.</param>
    /// <param name="single">Whether library and font stand in the page, which then needs nothing but itself.</param>
    /// <param name="library">Where the live page lies whose library answers the page's explorers; none where they interpolate.</param>
    public string Write(string body, bool hasCharts, bool single = true, string? library = null)
    {
        var word = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(body)).AsSpan(0, 18));
        var page = new StringBuilder(body.Length + 120_000);
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.Append($"<meta http-equiv=\"Content-Security-Policy\" content=\"{Policy(hasCharts, single, word, library is not null)}\">\n");
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append($"<title>{Escape.Text(title)}</title>\n");
        if (library is not null) page.Append($"<meta name=\"nk-library\" content=\"{Escape.Text(library)}\">\n");
        var equations = body.Contains("<math", StringComparison.Ordinal);
        if (equations && !single) page.Append($"<link rel=\"stylesheet\" href=\"{FontFile}\">\n");
        page.Append("<style>\n").Append(equations && single ? PageResources.MathFont : "");
        page.Append($"{PageResources.Style}{Stylesheet.Text}\n</style>\n</head>\n");
        page.Append($"<body>\n{body}\n");
        if (hasCharts && single) page.Append("<script>").Append(PlotlyScript.Wrapped).Append("</script>\n");
        else if (hasCharts) page.Append($"<script nonce=\"{word}\" src=\"{LibraryFile}\"></script>\n");
        page.Append("<script>").Append(PageResources.Script).Append("</script>\n</body>\n</html>\n");
        return page.ToString();
    }

    // The chart library builds some of its drawing code at run time, hence 'unsafe-eval'; it may still load nothing.
    private static string Policy(bool hasCharts, bool single, string word, bool hasLibrary) =>
        $"default-src 'none'; style-src 'unsafe-inline'{(single ? "" : " 'self' file:")}; script-src "
            + (hasCharts ? single ? $"'{HashOf(PlotlyScript.Wrapped)}' " : $"'nonce-{word}' " : "")
            + $"'{HashOf(ExplorerScript.Text)}' '{HashOf(PageResources.Script)}' 'unsafe-eval'; "
            + (hasLibrary ? "frame-src 'self' file:; " : "") + "img-src data: blob:; font-src data:; form-action 'none'; base-uri 'none'";

    private static string HashOf(string script) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
}
