using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Notebooks;

/// <summary>Reads the text of a notebook so that nothing in it can surprise whoever edits it later: every name stands once in its object,
/// every string is whole, and what the format says is text, a list or an object is one.</summary>
internal static class NotebookJson
{
    private const string Remedy = "Restore it from version control or save it again from a notebook front-end.";

    private static readonly JsonDocumentOptions Once = new() { AllowDuplicateProperties = false };

    /// <summary>The file as JSON.</summary>
    /// <param name="text">Its whole text.</param>
    /// <exception cref="NotebookFormatException">It is not JSON, or JSON that can be read in two ways.</exception>
    public static JsonNode? Read(string text)
    {
        JsonNode? root;
        try
        {
            if (HasBrokenText(text)) throw new NotebookFormatException($"The file holds text that ends in half a character. {Remedy}");
            root = JsonNode.Parse(text, documentOptions: Once);
        }
        catch (JsonException e) when (IsJson(text))
        {
            throw new NotebookFormatException($"The file can be read in two ways, because a name stands twice in one of its objects{
                Named(e)}. {Remedy}");
        }
        catch (JsonException e)
        {
            throw new NotebookFormatException(string.Create(
                CultureInfo.InvariantCulture,
                $"The file is not JSON (line {e.LineNumber + 1}, character {e.BytePositionInLine + 1}). {Remedy}"));
        }

        return root;
    }

    /// <summary>What is wrong with the types of a cell, a clause; none where nothing is.</summary>
    /// <param name="cell">The cell's JSON.</param>
    public static string? Mistyped(JsonObject cell) =>
        !IsText(cell["source"]) ? "its source is not text"
        : cell["metadata"] is not (null or JsonObject) ? "its metadata is not an object"
        : cell["metadata"]?["tags"] is not (null or JsonArray) ? "its tags are not a list"
        : cell["attachments"] is not (null or JsonObject) ? "its attachments are not an object"
        : null;

    private static bool IsText(JsonNode? node) => node switch
    {
        JsonArray lines => lines.All(l => l is JsonValue && l.GetValueKind() == JsonValueKind.String),
        JsonValue value => value.GetValueKind() == JsonValueKind.String,
        _ => false,
    };

    private static bool IsJson(string text)
    {
        try
        {
            using var read = JsonDocument.Parse(text);
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    // The reader's own message names the property between quotes; its path says where.
    private static string Named(JsonException e) => e.Message.Split('\'') is [_, { Length: > 0 and < 60 } name, ..] ? $": {name}" : "";

    // Half of a surrogate pair is JSON by its grammar but no text.
    private static bool HasBrokenText(string text)
    {
        if (!text.Contains("\\u", StringComparison.Ordinal)) return false;
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(text));
        try
        {
            while (reader.Read())
                if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && reader.ValueIsEscaped) reader.GetString();
            return false;
        }
        catch (InvalidOperationException)
        {
            return true;
        }
    }
}
