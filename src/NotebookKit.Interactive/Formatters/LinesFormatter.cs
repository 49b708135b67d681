using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>The numbers of a result as a table.</summary>
internal static class LinesFormatter
{
    // A number and its unit stay on one line; a sentence may not push the table out of the page.
    private const int LongestOnOneLine = 32;

    public static void Html(IEnumerable<ResultLine> lines, TextWriter writer)
    {
        var all = lines.ToList();
        if (all.Count == 0) return;
        var notes = all.Any(l => l.Note.Length > 0);
        writer.Write("<table class=\"nk-lines\"><tbody>");
        foreach (var line in all)
        {
            var (isLong, alone) = (line.Value.Length > LongestOnOneLine, notes && line.Note.Length == 0);
            writer.Write($"<tr><th scope=\"row\">{Escape.Text(line.Name)}</th><td class=\"nk-value{(isLong ? " nk-long" : "")}\""
                + $"{(alone ? " colspan=\"2\"" : "")}>{Escape.Text(line.Value)}</td>");
            if (notes && !alone) writer.Write($"<td class=\"nk-note\">{Escape.Text(line.Note)}</td>");
            writer.Write("</tr>");
        }
        writer.Write("</tbody></table>");
    }

    public static void Plain(IEnumerable<ResultLine> lines, TextWriter writer)
    {
        var all = lines.ToList();
        var width = all.Count == 0 ? 0 : all.Max(l => l.Name.Length);
        foreach (var line in all)
            writer.WriteLine($"  {line.Name.PadRight(width)}  {line.Value}{(line.Note.Length > 0 ? "   (" + line.Note + ")" : "")}");
    }
}
