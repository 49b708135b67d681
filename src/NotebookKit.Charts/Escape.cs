using System.Text;

namespace NotebookKit.Charts;

/// <summary>
/// Keeps text from being read as markup or script; the one place for charts, formatters and pages. Letters of all scripts stay as they are;
/// what no XML may hold is left out.
/// </summary>
internal static class Escape
{
    /// <summary>Text inside an element of HTML or SVG, or inside a quoted attribute.</summary>
    /// <param name="text">Any text; none is written as nothing.</param>
    public static string Text(string? text) => Written(text ?? "", quotes: true);

    /// <summary>Text inside a figure. Plotly.js reads a few tags there and knows no name for a quotation mark.</summary>
    /// <param name="text">Any text.</param>
    public static string Figure(string text) => Written(text, quotes: false);

    /// <summary>JSON inside a script element: in JSON a "&lt;" stands in strings alone, where it may be written as its number.</summary>
    /// <param name="json">Valid JSON.</param>
    public static string ScriptJson(string json) => json.Replace("<", "\\u003c", StringComparison.Ordinal);

    private static string Written(string text, bool quotes)
    {
        var html = new StringBuilder(text.Length + 16);
        // Half a surrogate pair is read as the sign for "no character".
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&': html.Append("&amp;"); break;
                case '<': html.Append("&lt;"); break;
                case '>': html.Append("&gt;"); break;
                case '"' when quotes: html.Append("&quot;"); break;
                case '\'' when quotes: html.Append("&#39;"); break;
                case 0xFFFE or 0xFFFF: break;
                default:
                    if (!Rune.IsControl(rune) || rune.Value is '\t' or '\n' or '\r') html.Append(rune.ToString());
                    break;
            }
        }

        return html.ToString();
    }
}
