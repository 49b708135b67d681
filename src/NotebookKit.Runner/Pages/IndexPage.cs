using System.Globalization;
using System.Text;
using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Pages;

/// <summary>The page that lists all pages of a run.</summary>
internal static class IndexPage
{
    /// <summary>The whole page.</summary>
    /// <param name="reports">What became of each notebook, in order.</param>
    public static string Write(IReadOnlyList<NotebookReport> reports)
    {
        var passed = reports.Count(r => r.Passed);
        var body = new StringBuilder("<main><h1>Notebooks</h1>");
        body.Append(CultureInfo.InvariantCulture,
            $"<p class=\"state\">{passed} of {reports.Count} ran to their end.</p><ul class=\"notebooks\">");
        foreach (var report in reports) body.Append(Entry(report));
        return new PageFrame("Notebooks").Write(body.Append("</ul></main>").ToString(), hasCharts: false);
    }

    private static string Entry(NotebookReport report)
    {
        var title = Escape.Text(report.Title);
        var html = new StringBuilder("<li><h2>");
        html.Append(report.PageFile is null ? title : $"<a href=\"pages/{Link(report.Name)}.html\">{title}</a>").Append("</h2>");
        if (report.Summary.Length > 0) html.Append($"<p>{Escape.Text(report.Summary)}</p>");
        html.Append(AnswerBlock.ForIndex(report.Passed ? report.Answer : report.Answer.OfFailed));
        html.Append("<p class=\"state\">").Append(State(report));
        if (report.ExecutedFile is not null) html.Append($" · <a href=\"notebooks/{Link(report.Name)}.ipynb\">executed notebook</a>");
        return html.Append("</p></li>").ToString();
    }

    private static string State(NotebookReport report) => report.Failures.Count > 0
        ? string.Concat(report.Failures.Select(f =>
            $"<span class=\"bad\">failed</span> in {Escape.Text(f.Place)}<br>{Escape.Text(f.Error.Message)}<br>")) + report.Missing
        : string.Create(CultureInfo.InvariantCulture, $"{report.CellCount} cells in {report.Took.TotalSeconds:0.0} s");

    private static string Link(string name) => Escape.Text(Uri.EscapeDataString(name));
}
