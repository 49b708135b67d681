using System.Text;
using System.Text.RegularExpressions;

namespace NotebookKit.Runner.Pages;

/// <summary>
/// Says each caution in full once on a page, where the first result comes that it applies to. Every later result names it in one line
/// that leads there: what stands twenty times is read by nobody. A flight card, which is printed by itself, keeps all its cautions; a
/// checklist doesn't, as the proof has a sheet of its own.
/// </summary>
internal sealed partial class PageCautions
{
    private readonly Dictionary<string, string> _places = new(StringComparer.Ordinal);
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    /// <summary>An output with its cautions as they are to stand at this place of the page.</summary>
    /// <param name="html">Html of the output.</param>
    public string Settle(string html)
    {
        var whole = StandsAlone().IsMatch(html);
        html = TickedLines().Replace(html, lines => Ticked(TickedLine().Matches(lines.Value)));
        return Box().Replace(html, box => Written(Item().Matches(box.Groups["items"].Value), whole));
    }

    private string Ticked(IEnumerable<Match> lines)
    {
        var full = new StringBuilder();
        var links = new List<string>();
        foreach (var line in lines)
        {
            var topic = line.Groups["topic"].Value;
            var text = $"<b>{topic}.</b> {line.Groups["text"].Value}";
            if (_places.TryGetValue(text, out var id)) links.Add($"<a href=\"#{id}\">{topic}</a>");
            else full.Append(line.Value.Insert("<p".Length, $" id=\"{_places[text] = NewId(topic)}\""));
        }

        return full + (links.Count == 0 ? "" : $"<div class=\"nk-cautions\">{Again(links)}</div>");
    }

    private string Written(IEnumerable<Match> items, bool whole)
    {
        var full = new StringBuilder();
        var links = new List<string>();
        foreach (var item in items)
        {
            var (text, topic) = (item.Groups["text"].Value, item.Groups["topic"].Value);
            if (!_places.TryGetValue(text, out var id)) full.Append($"<li id=\"{_places[text] = NewId(topic)}\">{text}</li>");
            else if (whole) full.Append($"<li>{text}</li>");
            else links.Add($"<a href=\"#{id}\">{topic}</a>");
        }

        return "<div class=\"nk-cautions\">" + (full.Length == 0 ? "" : $"<b>Cautions</b><ul>{full}</ul>") + Again(links) + "</div>";
    }

    private static string Again(List<string> links) =>
        links.Count == 0 ? "" : $"<p class=\"again\"><b>Cautions as above:</b> {string.Join(", ", links)}.</p>";

    private string NewId(string topic)
    {
        var stem = "caution-" + NoLetters().Replace(topic, "-").Trim('-');
        var id = stem;
        for (var i = 2; !_taken.Add(id); i++) id = $"{stem}-{i}";
        return id;
    }

    [GeneratedRegex("""^<div class="nk-out nk-(card|caution)">""")]
    private static partial Regex StandsAlone();

    [GeneratedRegex("""<div class="nk-cautions"><b>Cautions</b><ul>(?<items>(<li><b>[^<]*</b>[^<]*</li>)+)</ul></div>""")]
    private static partial Regex Box();

    [GeneratedRegex("""<li>(?<text><b>(?<topic>[^<]*)\.</b>[^<]*)</li>""")]
    private static partial Regex Item();

    [GeneratedRegex("""(<p class="nk-finding nk-warning"><b>Caution\.</b> [^:<]*: [^<]*</p>)+""")]
    private static partial Regex TickedLines();

    [GeneratedRegex("""<p class="nk-finding nk-warning"><b>Caution\.</b> (?<topic>[^:<]*): (?<text>[^<]*)</p>""")]
    private static partial Regex TickedLine();

    [GeneratedRegex("[^A-Za-z0-9]+")]
    private static partial Regex NoLetters();
}
