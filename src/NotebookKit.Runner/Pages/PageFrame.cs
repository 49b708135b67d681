using System.Security.Cryptography;
using System.Text;
using NotebookKit.Charts;
using NotebookKit.Charts.Explorers;
using NotebookKit.Interactive;

namespace NotebookKit.Runner.Pages;

/// <summary>
/// The outer html of every page. Its policy line forbids the browser any request and any script but ours (known by their hashes), whatever
/// a text or an output holds.
/// </summary>
/// <param name="title">Title of the page, plain text.</param>
internal sealed class PageFrame(string title)
{
    // The chart library builds some of its drawing code at run time, hence 'unsafe-eval'; it may still load nothing.
    private static readonly string Policy =
        $"default-src 'none'; style-src 'unsafe-inline'; script-src '{HashOf(PlotlyScript.Wrapped)}' '{HashOf(ExplorerScript.Text)}' "
            + $"'{HashOf(PageResources.Script)}' 'unsafe-eval'; "
        + "img-src data: blob:; font-src data:; form-action 'none'; base-uri 'none'";

    /// <summary>The whole page.</summary>
    /// <param name="body">Html of the body.</param>
    /// <param name="hasCharts">Whether the page needs the chart library.</param>
    public string Write(string body, bool hasCharts)
    {
        var page = new StringBuilder(body.Length + 20_000);
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.Append($"<meta http-equiv=\"Content-Security-Policy\" content=\"{Policy}\">\n");
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append($"<title>{Escape.Text(title)}</title>\n<style>\n{PageResources.Style}{Stylesheet.Text}\n</style>\n</head>\n");
        page.Append($"<body>\n{body}\n");
        if (hasCharts) page.Append("<script>").Append(PlotlyScript.Wrapped).Append("</script>\n");
        page.Append("<script>").Append(PageResources.Script).Append("</script>\n</body>\n</html>\n");
        return page.ToString();
    }

    private static string HashOf(string script) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
}
