using System.Globalization;
using NotebookKit.Runner.Batch;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;
using Spectre.Console;

namespace NotebookKit.Runner.Terminal;

/// <summary>What a run says when it is over: failures, main numbers, what was made. Written as it is, never wrapped or coloured.</summary>
internal static class RunSummary
{
    /// <summary>One line on one notebook.</summary>
    /// <param name="report">What became of it.</param>
    public static string Line(NotebookReport report) => report.Failure is { } failure
        ? $"  {report.Name,-24} FAILED in {failure.Place}"
        : string.Create(CultureInfo.InvariantCulture,
            $"  {report.Name,-24} passed  {report.CellCount,3} cells {report.Took.TotalSeconds,6:0.0} s");

    /// <summary>Writes the summary.</summary>
    /// <param name="console">Where to.</param>
    /// <param name="options">What was run.</param>
    /// <param name="result">What came of it.</param>
    /// <param name="took">How long it took.</param>
    public static void Write(IAnsiConsole console, RunOptions options, RunResult result, TimeSpan took)
    {
        var reports = result.Reports;
        var text = console.Profile.Out.Writer;
        WriteFailures(text, reports);
        foreach (var problem in result.Problems) text.WriteLine($"\n{problem}");
        WriteRequirements(text, reports);
        WriteHeadlines(text, reports);
        text.WriteLine();
        text.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{reports.Count(r => r.Passed)} of {reports.Count} notebooks ran to their end in {took.TotalSeconds:0.0} s. Made:"));
        if (options.Shard is { } part)
        {
            foreach (var file in reports.SelectMany(r => ShardFiles.Of(options.ShardFolder(r.Name),
                part))) text.WriteLine($"  {Near(file)}");
            text.Flush();
            return;
        }

        if (result.HasIndex) text.WriteLine($"  {Near(options.IndexFile)}  (list of all pages: open it in a browser)");
        text.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  {Near(Path.Combine(options.OutputFolder, "pages"))}  ({reports.Count(r => r.PageFile is not null)} pages)"));
        text.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  {Near(Path.Combine(options.OutputFolder, "notebooks"))}  ({reports.Count(r => r.ExecutedFile is not
            null)} executed notebooks)"));
        text.Flush();
    }

    private static void WriteFailures(TextWriter text, IReadOnlyList<NotebookReport> reports)
    {
        foreach (var report in reports)
        {
            foreach (var failure in report.Failures)
            {
                text.WriteLine();
                text.WriteLine($"{report.Name}: {failure.Place}");
                text.WriteLine($"  {ErrorText.Heading(failure.Error).ReplaceLineEndings("\n  ")}");
            }

            if (report.Missing.Length > 0) text.WriteLine($"  {report.Missing}");
        }
    }

    private static void WriteRequirements(TextWriter text, IReadOnlyList<NotebookReport> reports)
    {
        foreach (var report in reports)
        {
            var open = report.Answer.Requirements.Where(t => !t.AllHold).ToList();
            if (open.Count + report.Answer.ChangedGivens.Count + report.Answer.RecordNote.Length == 0) continue;
            text.WriteLine();
            text.WriteLine($"{report.Name}: what changed");
            foreach (var given in report.Answer.ChangedGivens) text.WriteLine($"  Changed given: {given}.");
            foreach (var table in open)
                text.WriteLine($"  Requirements{(table.Title.Length > 0 ? " of " + table.Title : "")}: {table.Line}");
            if (report.Answer.RecordNote.Length > 0) text.WriteLine($"  {report.Answer.RecordNote}");
        }
    }

    private static void WriteHeadlines(TextWriter text, IReadOnlyList<NotebookReport> reports)
    {
        if (reports.All(r => r.Answer.Numbers.Count == 0)) return;
        text.WriteLine();
        text.WriteLine("Main numbers");
        foreach (var report in reports)
            foreach (var headline in report.Answer.Numbers)
                text.WriteLine($"  {report.Name,-24} {headline.Name,-32} {headline.Value}");
    }

    private static string Near(string path)
    {
        var relative = Path.GetRelativePath(Directory.GetCurrentDirectory(), path);
        return relative.StartsWith("..", StringComparison.Ordinal) ? path : relative;
    }
}
