using NotebookKit.Interactive.Formatters;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive;

/// <summary>A result as html: title, numbers, findings and cautions, as a cell shows it.</summary>
public static class ResultHtml
{
    /// <summary>The html; every text in it is escaped.</summary>
    /// <param name="result">The result.</param>
    public static string Of(IResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        using var html = new StringWriter { NewLine = "\n" };
        ResultFormatter.Html(result, html);
        return html.ToString();
    }
}
