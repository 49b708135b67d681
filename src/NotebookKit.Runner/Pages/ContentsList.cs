using System.Text;

namespace NotebookKit.Runner.Pages;

/// <summary>The headings of one page: gives each an id of its own and lists them.</summary>
internal sealed class ContentsList
{
    private const int DeepestLevel = 3;
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);
    private readonly List<(int Level, string Id, string Text)> _entries = [];

    /// <summary>Takes a heading in and gives its id: its words joined by hyphens, as notebook front-ends do it.</summary>
    /// <param name="level">Level, 1 to 6.</param>
    /// <param name="text">Its words.</param>
    public string Add(int level, string text)
    {
        var plain = string.Join('-', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var id = plain.Length == 0 ? "section" : plain;
        for (var i = 2; !_taken.Add(id); i++) id = $"{plain}-{i}";
        _entries.Add((level, id, text));
        return id;
    }

    /// <summary>The list as html; empty for a page of one heading.</summary>
    public string ToHtml()
    {
        var listed = _entries.Where(e => e.Level <= DeepestLevel && e.Text.Length > 0).ToList();
        if (listed.Count < 2) return "";
        var html = new StringBuilder("<nav class=\"contents\" aria-label=\"Contents\"><details><summary>Contents</summary><ul>");
        foreach (var (level, id, text) in listed)
            html.Append($"<li class=\"level-{level}\"><a href=\"#{Escape.Text(Uri.EscapeDataString(id))}\">{Escape.Text(text)}</a></li>");
        return html.Append("</ul></details></nav>").ToString();
    }
}
