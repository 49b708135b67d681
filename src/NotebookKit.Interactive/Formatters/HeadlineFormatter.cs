using System.Text.Json;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Main numbers, for the reader and, in a media type of ours, for the program that runs notebooks.</summary>
internal static class HeadlineFormatter
{
    public const string Mime = "application/vnd.notebookkit.headline+json";

    // A number and its unit stand on one line; words take the room of two numbers.
    private const int LongestNumber = 20;

    public static void Html(IEnumerable<Headline> headlines, TextWriter writer)
    {
        writer.Write("<dl class=\"headlines\">");
        foreach (var headline in headlines)
            writer.Write($"<div{(headline.Value.Length > LongestNumber ? " class=\"long\"" : "")}>"
                + $"<dt>{Escape.Text(headline.Name)}</dt><dd>{Escape.Text(headline.Value)}</dd></div>");
        writer.Write("</dl>");
    }

    public static void Plain(IEnumerable<Headline> headlines, TextWriter writer) => writer.Write(string.Join('\n', headlines));

    public static void Json(IEnumerable<Headline> headlines, TextWriter writer) => writer.Write(JsonSerializer.Serialize(headlines));
}
