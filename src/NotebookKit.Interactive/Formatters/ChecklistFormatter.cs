using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Sentences one below the other, none left out; one that begins with "[ ]" gets a box to tick.</summary>
internal static class ChecklistFormatter
{
    private const string Box = "[ ] ";

    public static void Html(IEnumerable<string> lines, TextWriter writer) => Fragment.Write(writer, "checklist", w =>
    {
        w.Write("<ul class=\"nk-checklist\" style=\"list-style:none;padding-left:0\">");
        foreach (var line in lines)
        {
            var tick = line.StartsWith(Box, StringComparison.Ordinal);
            w.Write($"<li style=\"margin:.35em 0;padding-left:1.6em;text-indent:-1.6em\">{(tick ? "<span aria-hidden=\"true\">☐</span> "
                : "")}{Escape.Text(tick ? line[Box.Length..] : line)}</li>");
        }

        w.Write("</ul>");
    });

    public static void Plain(IEnumerable<string> lines, TextWriter writer)
    {
        foreach (var line in lines) writer.WriteLine(line);
    }
}
