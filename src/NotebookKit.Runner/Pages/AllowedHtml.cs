using System.Text;
using System.Text.RegularExpressions;

namespace NotebookKit.Runner.Pages;

/// <summary>
/// What the raw html of one text cell may do: fold, table, line breaks, emphasis, links and pictures. A tag that is on the list is
/// written anew with its allowed attributes alone; whatever else stands between angle brackets is shown as text, so that
/// nothing of another's notebook can navigate, style, run, or reach beyond its cell.
/// </summary>
/// <param name="pictures">Finds the cell's pictures.</param>
/// <param name="hasPage">Whether a notebook of this name has a page.</param>
internal sealed class AllowedHtml(Pictures pictures, Func<string, bool> hasPage)
{
    private static readonly HashSet<string> Tags = new(StringComparer.Ordinal)
    {
        "a", "b", "blockquote", "br", "caption", "center", "code", "dd", "del", "details", "div", "dl", "dt", "em", "h2", "h3", "h4", "hr",
        "i", "img", "ins", "kbd", "li", "mark", "ol", "p", "pre", "q", "s", "samp", "small", "span", "strong", "sub", "summary", "sup",
        "table", "tbody", "td", "tfoot", "th", "thead", "tr", "u", "ul", "var", "wbr",
    };

    private static readonly HashSet<string> Single = new(StringComparer.Ordinal) { "br", "hr", "img", "wbr" };

    // Linear in the length of the text, whatever stands there.
    private static readonly Regex Piece = new(
        """<!--(?:[^-]|-[^-]|--[^>])*-->|<(?<close>/?)(?<name>[A-Za-z][A-Za-z0-9]*)(?<rest>(?:\s+[A-Za-z][A-Za-z-]*(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'=<>`]+))?)*)\s*/?>""",
        RegexOptions.NonBacktracking);

    private static readonly Regex Attribute = new(
        """(?<name>[A-Za-z][A-Za-z-]*)(?:\s*=\s*(?:"(?<value>[^"]*)"|'(?<value>[^']*)'|(?<value>[^\s"'=<>`]+)))?""",
        RegexOptions.NonBacktracking);

    private readonly List<string> _open = [];

    /// <summary>A piece of raw html as the page may have it.</summary>
    /// <param name="html">As it stands in the cell.</param>
    public string Of(string html)
    {
        var page = new StringBuilder(html.Length);
        var at = 0;
        foreach (Match piece in Piece.Matches(html))
        {
            page.Append(Text(html[at..piece.Index]));
            at = piece.Index + piece.Length;
            if (!piece.Groups["name"].Success) continue;
            var name = piece.Groups["name"].Value.ToLowerInvariant();
            page.Append(!Tags.Contains(name) ? Text(piece.Value)
                : piece.Groups["close"].Length > 0 ? Closed(name) : Opened(name, piece.Groups["rest"].Value));
        }

        return page.Append(Text(html[at..])).ToString();
    }

    /// <summary>Closes what the cell leaves open, so that it ends with its cell.</summary>
    public string End()
    {
        var page = string.Concat(Enumerable.Reverse(_open).Select(name => $"</{name}>"));
        _open.Clear();
        return page;
    }

    private string Closed(string name)
    {
        var at = _open.LastIndexOf(name);
        if (at < 0) return "";
        _open.RemoveAt(at);
        return $"</{name}>";
    }

    private string Opened(string name, string rest)
    {
        var given = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (Match attribute in Attribute.Matches(rest))
            given.TryAdd(attribute.Groups["name"].Value.ToLowerInvariant(), System.Net.WebUtility.HtmlDecode(
                attribute.Groups["value"].Value));
        if (name == "img") return Picture(given);
        var kept = string.Concat(given.Select(g => Kept(name, g.Key, g.Value)));
        if (!Single.Contains(name)) _open.Add(name);
        return $"<{name}{kept}>";
    }

    private string Picture(Dictionary<string, string> given)
    {
        var words = given.GetValueOrDefault("alt", "");
        return pictures.Find(given.GetValueOrDefault("src", "")) is { } inside
            ? $"<img src=\"{Escape.Text(inside)}\" alt=\"{Escape.Text(words)}\"{
                string.Concat(given.Select(g => Kept("img", g.Key, g.Value)))}>"
            : Escape.Text($"picture not found: {words}");
    }

    private string Kept(string tag, string name, string value) => (tag, name) switch
    {
        ("a", "href") when PageLinks.Rewrite(value.Trim(), hasPage) is { } target => $" href=\"{Escape.Text(target)}\"",
        ("details", "open") => " open",
        ("td" or "th", "colspan" or "rowspan") or ("img", "width" or "height") when IsSmall(value) => $" {name}=\"{value}\"",
        ("ol", "start") when IsSmall(value) => $" start=\"{value}\"",
        (_, "title") => $" title=\"{Escape.Text(value)}\"",
        _ => "",
    };

    private static bool IsSmall(string value) => value.Length is > 0 and < 5 && value.All(char.IsAsciiDigit);

    // What its author wrote as an entity stays one: an entity is text.
    private static string Text(string text) => text.Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal);
}
