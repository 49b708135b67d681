using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.Interactive.Formatters;

namespace NotebookKit.Runner.Engine;

/// <summary>The media types that notebooks carry, and how each is stored.</summary>
internal static class MediaTypes
{
    /// <summary>A figure as plotly.js reads it.</summary>
    public const string Figure = "application/vnd.plotly.v1+json";

    /// <summary>One main number of a notebook.</summary>
    public const string Headline = HeadlineFormatter.Mime;

    /// <summary>What a result decides.</summary>
    public const string Verdict = VerdictFormatter.Mime;

    /// <summary>A design record as it is kept.</summary>
    public const string Record = VerdictFormatter.RecordMime;

    /// <summary>A sheet of paper, without its layout.</summary>
    public const string Sheet = SheetFormatter.Mime;

    /// <summary>Html.</summary>
    public const string Html = "text/html";

    /// <summary>Plain text.</summary>
    public const string Text = "text/plain";

    /// <summary>Whether the notebook format stores it as JSON and not as text.</summary>
    /// <param name="mediaType">Media type.</param>
    public static bool IsJson(string mediaType) =>
        mediaType == "application/json" || mediaType.EndsWith("+json", StringComparison.Ordinal);

    /// <summary>The value as the notebook format stores it; text where it should be JSON and isn't.</summary>
    /// <param name="mediaType">Media type.</param>
    /// <param name="value">Text of the value.</param>
    public static JsonNode? Store(string mediaType, string value)
    {
        if (!IsJson(mediaType)) return JsonValue.Create(value);
        try
        {
            return JsonNode.Parse(value);
        }
        catch (JsonException)
        {
            return JsonValue.Create(value);
        }
    }
}
