using System.Net;

namespace NotebookKit.Runner.Pages;

/// <summary>Keeps text from being read as markup or script.</summary>
internal static class Escape
{
    /// <summary>Text for an html page, also inside a quoted attribute.</summary>
    /// <param name="text">Any text.</param>
    public static string Html(string text) => WebUtility.HtmlEncode(text);

    /// <summary>JSON for the inside of a script element: in JSON a "&lt;" stands in strings alone, where it may be written as its number.</summary>
    /// <param name="json">Valid JSON.</param>
    public static string ScriptJson(string json) => json.Replace("<", "\\u003c", StringComparison.Ordinal);
}
