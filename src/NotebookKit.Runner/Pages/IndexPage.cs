using System.Globalization;
using System.Text;
using NotebookKit.Provenance;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;

namespace NotebookKit.Runner.Pages;

/// <summary>The page that a reader opens first: what this is, what was decided, where the papers are, then the lessons.</summary>
/// <param name="options">The run.</param>
internal sealed class IndexPage(RunOptions options)
{
    private const int Numbers = 3;

    private const string Lead = "These pages work out the whole job of building and flying a pressurised-water rocket with a composite "
        + "pressure vessel: what the vessel holds, which pressure proves it, how it is filled, how high the vehicle flies and where it "
        + "comes down. Every number has its model, its source and its range beside it. These are engineering estimates for education and "
        + "planning.";

    /// <summary>The whole page.</summary>
    /// <param name="reports">What became of each notebook, in order.</param>
    public string Write(IReadOnlyList<NotebookReport> reports)
    {
        var title = reports.Count == 1 ? reports[0].Title : "Pressurised-water rockets, from layup to landing";
        var body = new StringBuilder($"<main class=\"index\"><h1>{Escape.Text(title)}</h1><p class=\"lead\">{Lead}</p>");
        body.Append(Failed(reports)).Append(Decided(reports)).Append(new IndexButtons(options).ToHtml(reports));
        body.Append(Caution()).Append(reports.Count > 1 ? "<h2>The lessons</h2>" : "").Append("<ol class=\"lessons\">");
        foreach (var report in reports) body.Append(Entry(report));
        body.Append("</ol>").Append(Run(reports)).Append("</main>");
        return new PageFrame(title).Write(body.ToString(), hasCharts: false);
    }

    // The decision is that of the first lesson that shows a flight card, or of the first that decides anything.
    private static string Decided(IReadOnlyList<NotebookReport> reports)
    {
        var main = MainOf(reports);
        if (main is null) return "";
        var words = main.Passed ? AnswerBlock.Decisions(main.Answer) : AnswerBlock.Decisions(main.Answer.OfFailed);
        return $"<section class=\"decided\" aria-label=\"What was decided\">{AnswerBlock.Picture(main.Places)}{words}</section>";
    }

    private static NotebookReport? MainOf(IReadOnlyList<NotebookReport> reports) =>
        reports.FirstOrDefault(r => r.Passed && r.Places.Of(PlaceKind.FlightCard) is not null)
        ?? reports.FirstOrDefault(r => r.Passed && r.Answer.Verdicts.Count > 0)
        ?? reports.FirstOrDefault(r => r.Places.Picture.Length > 0);

    private static string Caution()
    {
        var items = new[] { Cautions.StoredEnergy, Cautions.Proof, Cautions.Composite, Cautions.Bench, Cautions.Flight,
            Cautions.Prediction };
        return "<section class=\"caution\" aria-label=\"Cautions\"><h2>Before anything else</h2><ul>"
            + string.Concat(items.Select(c => $"<li><b>{Escape.Text(c.Topic)}.</b> {Escape.Text(c.Text)}</li>")) + "</ul></section>";
    }

    private static string Failed(IReadOnlyList<NotebookReport> reports)
    {
        var failed = reports.Where(r => !r.Passed).ToList();
        return failed.Count == 0 ? "" : "<div class=\"failure\" role=\"alert\"><p><strong>Not everything was computed.</strong> "
            + $"Not to their end: {string.Join("; ", failed.Select(Named))}.</p></div>";
    }

    private static string Named(NotebookReport report) => report.PageFile is null ? Escape.Text(report.Title)
        : $"<a href=\"pages/{IndexButtons.Link(report.Name)}.html\">{Escape.Text(report.Title)}</a>";

    private static string Entry(NotebookReport report)
    {
        var html = new StringBuilder($"<li><h3>{Named(report)}</h3>");
        if (report.Summary.Length > 0) html.Append($"<p>{Escape.Text(WithoutLabel(report.Summary))}</p>");
        var answer = report.Passed ? report.Answer : report.Answer.OfFailed;
        html.Append(AnswerBlock.ForIndex(answer with
        {
            Numbers = [.. answer.Numbers.Take(Numbers)],
            Verdicts = [.. answer.Verdicts.Where(v => !v.Holds)],
        }));
        if (!report.Passed) html.Append("<p class=\"state\">").Append(State(report)).Append("</p>");
        return html.Append("</li>").ToString();
    }

    // A lesson begins with its question, and says so; here that is plain.
    private static string WithoutLabel(string summary) =>
        summary.StartsWith("Question. ", StringComparison.Ordinal) ? summary["Question. ".Length..] : summary;

    private static string State(NotebookReport report) => string.Concat(report.Failures.Select(f =>
        $"<span class=\"bad\">failed</span> in {Escape.Text(f.Place)}<br>{Escape.Text(f.Error.Message)}<br>")) + report.Missing;

    private static string Run(IReadOnlyList<NotebookReport> reports)
    {
        var html = new StringBuilder("<details class=\"run\"><summary>How these pages were computed</summary>");
        html.Append(CultureInfo.InvariantCulture,
            $"<p>{reports.Count(r => r.Passed)} of {reports.Count} notebooks ran to their end.</p><table><thead><tr><th>notebook</th>");
        html.Append("<th>cells</th><th>time</th></tr></thead><tbody>");
        foreach (var report in reports)
        {
            var name = Escape.Text(report.Name);
            html.Append("<tr><td>").Append(report.ExecutedFile is null ? name
                : $"<a href=\"notebooks/{IndexButtons.Link(report.Name)}.ipynb\">{name}</a>");
            html.Append(CultureInfo.InvariantCulture,
                $"</td><td>{report.CellCount}</td><td>{report.Took.TotalSeconds:0.0} s</td></tr>");
        }

        return html.Append("</tbody></table></details>").ToString();
    }
}
