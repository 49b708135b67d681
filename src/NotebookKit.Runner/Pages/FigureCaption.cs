using System.Text.Json.Nodes;
using NotebookKit.Charts;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Pages;

/// <summary>
/// Title and remark of a figure, taken out of it and written over it as text of the page: there they wrap at any width and are never drawn
/// over the legend.
/// </summary>
internal static class FigureCaption
{
    /// <summary>The caption as html; empty where the figure has no title.</summary>
    /// <param name="figure">Figure, which loses both.</param>
    public static string TakeFrom(JsonObject figure)
    {
        if (figure["layout"] is not JsonObject layout) return "";
        var title = layout["title"] is JsonObject full ? NotebookCell.TextOf(full["text"]) : NotebookCell.TextOf(layout["title"]);
        layout.Remove("title");
        var remark = "";
        if (layout["annotations"] is JsonArray notes
            && notes.OfType<JsonObject>().FirstOrDefault(n => NotebookCell.TextOf(n["name"]) == EngineeringChart.RemarkName) is { } note)
        {
            remark = NotebookCell.TextOf(note["text"]);
            notes.Remove(note);
        }

        // A page writes its words out in full: it knows its own size.
        if (layout["annotations"] is JsonArray all
            && all.OfType<JsonObject>().FirstOrDefault(n => NotebookCell.TextOf(n["name"]) == EngineeringChart.KeyName) is { } key)
            all.Remove(key);

        return title.Length + remark.Length == 0 ? "" : $"<figcaption>{Part("b", Bare(title))}{Part("span", Bare(remark))}</figcaption>";
    }

    // The texts of a figure are escaped already; ours are broken into lines, and titles are bold.
    private static string Bare(string text) => text.Replace("<br>", " ", StringComparison.Ordinal)
        .Replace("<b>", "", StringComparison.Ordinal).Replace("</b>", "", StringComparison.Ordinal);

    private static string Part(string element, string text) => text.Length == 0 ? ""
        : $"<{element}>{Escape.Text(System.Net.WebUtility.HtmlDecode(text))}</{element}>";
}
