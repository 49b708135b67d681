using System.Globalization;
using System.Text;
using NotebookKit.Charts.Results;
using NotebookKit.Clearance.Designs;
using NotebookKit.Interactive;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Reports;

/// <summary>A sweep as a page with its charts, and as a table for a spreadsheet.</summary>
internal static class SweepReport
{
    /// <summary>The whole page; it needs no network and no script.</summary>
    /// <param name="sweep">The sweep.</param>
    public static string Page(DesignSweep sweep)
    {
        var charts = sweep.Charts();
        var body = new StringBuilder($"<main><h1>{Escape.Text(sweep.Title)}</h1>");
        foreach (var chart in charts) body.Append($"<figure>{chart.ToSvg()}</figure>");
        if (charts.Count == 0) body.Append("<p>Three values or more have no chart; the table below has every design.</p>");
        return new PageFrame(sweep.Title).Write(body.Append(ResultHtml.Of(sweep)).Append("</main>").ToString(), hasCharts: false);
    }

    /// <summary>Every design in a line: its values, exact; its figures; what stands against it.</summary>
    /// <param name="sweep">The sweep.</param>
    public static string Csv(DesignSweep sweep)
    {
        var text = new StringBuilder();
        var inputs = Enumerable.Range(0, sweep.Axes.Count).Select(sweep.Input).ToList();
        var numeric = inputs.Select((s, k) => s.Name == sweep.Axes[k].Name).ToList();
        var figures = DesignSweep.FigureNames.Select(sweep.Column).Where(c => c.Values.Any(double.IsFinite)).ToList();
        text.AppendJoin(',', sweep.Axes.Select((a, k) => Quoted(numeric[k] ? $"{a.Name} [{inputs[k].Unit}]" : a.Name))
            .Concat(figures.Select(c => Quoted($"{c.Name} [{c.Unit}]"))).Concat(["\"all hold\"", "\"against\"", "\"why\""]))
            .Append('\n');
        for (var i = 0; i < sweep.Designs.Count; i++)
        {
            var design = sweep.Designs[i];
            text.AppendJoin(',', design.Values.Select((v, k) => numeric[k] ? inputs[k][i].ToString("R", CultureInfo.InvariantCulture)
                : Quoted(v)).Concat(figures.Select(c => double.IsFinite(c[i]) ? c[i].ToString("G6", CultureInfo.InvariantCulture) : ""))
                .Append(design.Holds ? "yes" : "no").Append(Quoted(design.Against)).Append(Quoted(design.Why))).Append('\n');
        }

        return text.ToString();
    }

    // A cell that begins like a formula would be run by a spreadsheet.
    private static string Quoted(string text) =>
        $"\"{(text is ['=' or '+' or '-' or '@', ..] ? "'" : "")}{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
