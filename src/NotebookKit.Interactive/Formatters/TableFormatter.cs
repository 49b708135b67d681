using NotebookKit.Interactive.Html;
using NotebookKit.Interactive.Tables;

namespace NotebookKit.Interactive.Formatters;

/// <summary>A table of text.</summary>
internal static class TableFormatter
{
    public static void Html(TextTable table, TextWriter writer) => Fragment.Write(writer, "table", w =>
    {
        w.Write($"<h4>{Escape.Text(table.Title)}</h4><table><thead><tr>");
        foreach (var heading in table.Headings) w.Write($"<th scope=\"col\">{Escape.Text(heading)}</th>");
        w.Write("</tr></thead><tbody>");
        foreach (var row in table.Rows) w.Write($"<tr>{string.Concat(row.Select(cell => $"<td>{Escape.Text(cell)}</td>"))}</tr>");
        w.Write("</tbody></table>");
        if (table.Remark.Length > 0) w.Write($"<div class=\"nk-note\">{Escape.Text(table.Remark)}</div>");
    });

    public static void Plain(TextTable table, TextWriter writer)
    {
        writer.WriteLine(table.Title);
        IReadOnlyList<IReadOnlyList<string>> all = [table.Headings, .. table.Rows];
        var widths = Enumerable.Range(0, table.Headings.Count).Select(i => all.Max(r => r[i].Length)).ToList();
        foreach (var row in all) writer.WriteLine("  " + string.Join("  ", row.Select((cell, i) => cell.PadRight(widths[i]))).TrimEnd());
        if (table.Remark.Length > 0) writer.WriteLine(table.Remark);
    }
}
