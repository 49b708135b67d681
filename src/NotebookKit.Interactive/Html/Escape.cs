using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace NotebookKit.Interactive.Html;

/// <summary>Makes text safe inside an HTML element or a quoted attribute. Letters of all scripts stay as they are.</summary>
internal static class Escape
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    public static string Text(string? text) => Encoder.Encode(text ?? "");
}
