using System.Text;
using System.Text.Json;

namespace NotebookKit.Materials.Files;

/// <summary>A JSON value that knows the line it starts on, so that a mistake in a user's file can be pointed at.</summary>
/// <param name="Line">Line it starts on, from 1.</param>
internal abstract record LinedJson(int Line)
{
    /// <summary>An object's members in order.</summary>
    public sealed record Members(int Line, IReadOnlyList<(string Name, int Line, LinedJson Value)> Entries) : LinedJson(Line);

    /// <summary>A list's items.</summary>
    public sealed record Items(int Line, IReadOnlyList<LinedJson> Values) : LinedJson(Line);

    /// <summary>Text, a number as written, true, false or null.</summary>
    public sealed record Scalar(int Line, string Text, JsonTokenType Kind) : LinedJson(Line);

    /// <summary>Reads a text; comments and a trailing comma are allowed.</summary>
    /// <exception cref="JsonException">The text isn't JSON; carries the line.</exception>
    public static LinedJson Parse(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip,
            AllowTrailingCommas = true });
        reader.Read();
        var value = Value(ref reader, bytes);
        // Reading on finds anything left over after the first value.
        while (reader.Read())
        {
        }

        return value;
    }

    private static LinedJson Value(ref Utf8JsonReader reader, byte[] bytes)
    {
        var line = LineAt(bytes, reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var members = new List<(string, int, LinedJson)>();
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    var name = reader.GetString()!;
                    var nameLine = LineAt(bytes, reader.TokenStartIndex);
                    reader.Read();
                    members.Add((name, nameLine, Value(ref reader, bytes)));
                }

                return new Members(line, members);
            case JsonTokenType.StartArray:
                var items = new List<LinedJson>();
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) items.Add(Value(ref reader, bytes));
                return new Items(line, items);
            case JsonTokenType.String:
                return new Scalar(line, reader.GetString()!, JsonTokenType.String);
            default:
                return new Scalar(line, Encoding.UTF8.GetString(reader.ValueSpan), reader.TokenType);
        }
    }

    private static int LineAt(byte[] bytes, long index) => 1 + bytes.AsSpan(0, (int)index).Count((byte)'\n');
}
