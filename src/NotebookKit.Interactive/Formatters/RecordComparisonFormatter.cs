using NotebookKit.Interactive.Html;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Formatters;

/// <summary>What changed between two records: every entry, under the heading of its kind. A list cut short would hide the change that
/// matters.</summary>
internal static class RecordComparisonFormatter
{
    private const string Heading = "Changes since the earlier record";
    private const string Quiet = "Nothing changed, and everything holds.";

    public static void Html(RecordComparison comparison, TextWriter writer) => Fragment.Write(writer, "comparison", w =>
    {
        w.Write($"<h4>{Heading}</h4>");
        if (comparison.IsQuiet) w.Write($"<p>{Quiet}</p>");
        foreach (var (kind, entries) in Parts(comparison))
            w.Write($"<p><b>{kind}</b></p><ul>{string.Concat(entries.Select(e => $"<li>{Escape.Text(e)}</li>"))}</ul>");
    });

    public static void Plain(RecordComparison comparison, TextWriter writer)
    {
        writer.WriteLine(Heading);
        if (comparison.IsQuiet) writer.WriteLine(Quiet);
        foreach (var (kind, entries) in Parts(comparison))
        {
            writer.WriteLine(kind);
            foreach (var entry in entries) writer.WriteLine($"  {entry}");
        }
    }

    private static IEnumerable<(string Kind, IReadOnlyList<string> Entries)> Parts(RecordComparison c) => new[]
    {
        ("Requirements that no longer hold", c.Broken),
        ("Decisions to look at again", c.LookAgain),
        ("Evidence that changed", c.ChangedEvidence),
        ("What rests on changed evidence", c.RestsOnChanged),
        ("Givens that changed", c.ChangedGivens),
        ("Decisions that changed", c.ChangedDecisions),
        ("Requirements that hold again", c.Mended),
    }.Where(p => p.Item2.Count > 0);
}
