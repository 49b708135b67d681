using System.Text;

namespace NotebookKit.Runner.Pages;

/// <summary>The outer html of every page. Its policy line forbids the browser any request, whatever an output holds.</summary>
/// <param name="title">Title of the page, plain text.</param>
internal sealed class PageFrame(string title)
{
    private const string Policy =
        "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline' 'unsafe-eval'; img-src data: blob:; font-src data:; form-action 'none'; base-uri 'none'";

    /// <summary>The whole page.</summary>
    /// <param name="body">Html of the body.</param>
    /// <param name="chartLibrary">Source of the chart library; none where the page has no chart.</param>
    public string Write(string body, string? chartLibrary)
    {
        var page = new StringBuilder(body.Length + (chartLibrary?.Length ?? 0) + 20_000);
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.Append($"<meta http-equiv=\"Content-Security-Policy\" content=\"{Policy}\">\n");
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append($"<title>{Escape.Html(title)}</title>\n<style>\n{PageResources.Style}</style>\n</head>\n<body>\n{body}\n");
        // Wrapped, so that a module loader on the page can't take the library for itself.
        if (chartLibrary is not null) page.Append("<script>(function(){var define,module,exports;\n").Append(chartLibrary).Append("\n}).call(window);</script>\n");
        page.Append("<script>\n").Append(PageResources.Script).Append("</script>\n</body>\n</html>\n");
        return page.ToString();
    }
}
