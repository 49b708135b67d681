using System.Text.RegularExpressions;
using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Formatters;

/// <summary>
/// A list of sentences, every one of them: a list that is cut short behind cover is worse than none. A line that begins with "[ ]" gets a
/// box to tick, and "____" a blank to write into; a list with boxes prints on a sheet of its own.
/// </summary>
internal static partial class ListFormatter
{
    private const string Box = "[ ] ", Warned = "CAUTION. ";

    public static void Html(IEnumerable<string> lines, TextWriter writer)
    {
        var all = lines.ToList();
        if (!all.Any(IsTicked))
        {
            Fragment.Write(writer, "list", w => w.Write($"<ul>{string.Concat(all.Select(l => $"<li>{Escape.Text(l)}</li>"))}</ul>"));
            return;
        }

        Fragment.Write(writer, "checklist", w =>
        {
            w.Write("<b>Checklist</b>");
            foreach (var line in all.Where(l => !IsTicked(l))) w.Write(Line(line));
            w.Write("<ol class=\"nk-ticks\">");
            foreach (var line in all.Where(IsTicked))
                w.Write($"<li>{Blank().Replace(Escape.Text(line[Box.Length..]), "<span class=\"nk-blank\"></span>")}</li>");
            w.Write("</ol><p class=\"nk-sign\">Done by, date and time:</p>");
        });
    }

    public static void Plain(IEnumerable<string> lines, TextWriter writer)
    {
        foreach (var line in lines) writer.WriteLine(line);
    }

    private static string Line(string text) => text.StartsWith(Warned, StringComparison.Ordinal)
        ? $"<p class=\"nk-finding nk-warning\"><b>Caution.</b> {Escape.Text(text[Warned.Length..])}</p>"
        : $"<p>{Escape.Text(text)}</p>";

    private static bool IsTicked(string line) => line.StartsWith(Box, StringComparison.Ordinal);

    [GeneratedRegex("_{3,}")]
    private static partial Regex Blank();
}
