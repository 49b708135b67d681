using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;

namespace NotebookKit.Runner.Pages;

/// <summary>The way from the index to what is printed: a sheet where there is one, else the place on a lesson's page.</summary>
/// <param name="options">The run.</param>
internal sealed class IndexButtons(RunOptions options)
{
    private static readonly (string Words, string Sheet, PlaceKind Place)[] Papers =
    [
        ("Flight card", "flight-card.html", PlaceKind.FlightCard),
        ("Proof sheet", "proof-sheet.html", PlaceKind.ProofPlan),
        ("Cutting plan", "cutting-plan.html", PlaceKind.CuttingPlan),
        ("Design record", "record.html", PlaceKind.Record),
        ("Pad sheet", "pad-sheet.html", PlaceKind.None),
        ("Templates", "templates.html", PlaceKind.None),
        ("Shopping list", "shopping-list.html", PlaceKind.None),
    ];

    /// <summary>The buttons; empty where there is nothing to lead to.</summary>
    /// <param name="reports">What became of each notebook.</param>
    public string ToHtml(IReadOnlyList<NotebookReport> reports)
    {
        var links = Papers.Select(p => (p.Words, To: Target(reports, p.Sheet, p.Place))).Where(l => l.To is not null).ToList();
        if (File.Exists(options.LivePage)) links.Add(("Live page", Path.GetFileName(options.LivePage)));
        return links.Count == 0 ? "" : "<nav class=\"buttons\" aria-label=\"Papers\">"
            + string.Concat(links.Select(l => $"<a href=\"{l.To}\">{l.Words}</a>")) + "</nav>";
    }

    /// <summary>A name as it stands in a link.</summary>
    /// <param name="name">File name without ending.</param>
    public static string Link(string name) => Escape.Text(Uri.EscapeDataString(name));

    private string? Target(IReadOnlyList<NotebookReport> reports, string sheet, PlaceKind place)
    {
        if (File.Exists(Path.Combine(options.SheetFolder, sheet))) return "sheets/" + sheet;
        var report = reports.FirstOrDefault(r => r.Passed && r.Places.Of(place) is not null);
        return report is null ? null : $"pages/{Link(report.Name)}.html#{report.Places.Of(place)}";
    }
}
