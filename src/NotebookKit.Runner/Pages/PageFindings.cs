using System.Globalization;
using System.Text.RegularExpressions;

namespace NotebookKit.Runner.Pages;

/// <summary>
/// Says each warning in full once on a page. A later result that has the same warning leads back to it in one line, with the warning's
/// first words. What is printed by itself, a card or a checklist, keeps all of them.
/// </summary>
internal sealed partial class PageFindings
{
    private const int FirstWords = 6;
    private readonly Dictionary<string, string> _places = new(StringComparer.Ordinal);

    /// <summary>An output with its warnings as they are to stand at this place of the page.</summary>
    /// <param name="html">Html of the output.</param>
    public string Settle(string html) => StandsAlone().IsMatch(html) ? html : Warning().Replace(html, Written);

    private string Written(Match found)
    {
        var text = found.Groups["text"].Value;
        if (_places.TryGetValue(text, out var id))
            return $"<div class=\"nk-finding {found.Groups["kind"].Value}\"><a class=\"again\" href=\"#{id}\">"
                + $"{found.Groups["word"].Value} as above: {Begins(text)}</a></div>";
        id = _places[text] = string.Create(CultureInfo.InvariantCulture, $"finding-{_places.Count + 1}");
        return found.Value.Insert("<div".Length, $" id=\"{id}\"");
    }

    private static string Begins(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length <= FirstWords ? text : string.Join(' ', words.Take(FirstWords)) + " …";
    }

    [GeneratedRegex("^<div class=\"nk-out nk-(card|checklist)\"")]
    private static partial Regex StandsAlone();

    [GeneratedRegex("<div class=\"nk-finding (?<kind>nk-warning|nk-remark)\"><b>(?<word>Warning|Note)\\.</b> (?<text>[^<]*)</div>")]
    private static partial Regex Warning();
}
