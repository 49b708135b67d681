using System.Text;
using System.Text.Json;

namespace NotebookKit.DesignFiles.Trees;

/// <summary>Reads a text into a tree whose every value knows its line and column. Comments are kept, a trailing comma is allowed.</summary>
internal sealed class TreeReader
{
    /// <summary>Longest text taken [bytes]; a design has some ten thousand.</summary>
    public const int LongestText = 1_000_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    // As many as the reader takes unless told otherwise.
    private const int DeepestText = 64;

    private readonly string _file;
    private readonly byte[] _bytes;
    private readonly int[] _lineStarts;
    private readonly List<DesignFileMistake> _mistakes = [];
    private readonly Stack<Place> _open = [];
    private int _lastLine;
    private (int Offset, int Letters) _counted;

    private readonly string _what;

    private TreeReader(string file, byte[] bytes, string what)
    {
        (_file, _bytes, _what) = (file, bytes, what);
        List<int> starts = [0];
        for (var i = 0; i < bytes.Length; i++)
            if (bytes[i] == '\n') starts.Add(i + 1);
        _lineStarts = [.. starts];
    }

    /// <summary>The tree of a text, and what it is called where it is empty.</summary>
    /// <exception cref="DesignFileException">The text is too long, no UTF-8, no JSON, or has a key twice.</exception>
    public static TreeNode Parse(string file, byte[] bytes, string what = "design")
    {
        if (bytes.Length > LongestText)
            throw new DesignFileException(file, new Place(1, 1), DesignFilesFindings.TextTooLong(bytes.Length / 1e6, LongestText / 1e6));
        if (bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
        var reader = new TreeReader(file, bytes, what);
        try
        {
            _ = Strict.GetCharCount(bytes);
        }
        catch (DecoderFallbackException error)
        {
            throw new DesignFileException(file, reader.PlaceAt(Math.Clamp(error.Index, 0, bytes.Length)), DesignFilesFindings.NotUtf8(),
                error);
        }

        return reader.Root();
    }

    private TreeNode Root()
    {
        var reader = new Utf8JsonReader(_bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Allow,
            AllowTrailingCommas = true });
        try
        {
            List<string> above = [], below = [];
            Next(ref reader);
            while (reader.TokenType == JsonTokenType.Comment)
            {
                above.Add(Remark(ref reader));
                Next(ref reader);
            }

            var root = Value(ref reader) with { Before = above };
            while (reader.Read())
                if (reader.TokenType == JsonTokenType.Comment) below.Add(Remark(ref reader));
            if (_mistakes.Count > 0) throw new DesignFileException(_file, _mistakes);
            return below.Count > 0 ? root with { After = string.Join('\n', below) } : root;
        }
        catch (JsonException error)
        {
            throw NotJson(error);
        }
    }

    private void Next(ref Utf8JsonReader reader)
    {
        if (!reader.Read()) throw new JsonException("end of data", null, _lineStarts.Length - 1, _bytes.Length - _lineStarts[^1]);
    }

    private DesignFileException NotJson(JsonException error)
    {
        var line = (int)Math.Clamp(error.LineNumber ?? 0, 0, _lineStarts.Length - 1);
        var offset = (int)Math.Clamp(_lineStarts[line] + (error.BytePositionInLine ?? 0), 0, _bytes.Length);
        var cut = _bytes.AsSpan(offset).Trim(" \t\r\n"u8).IsEmpty || error.Message.Contains("end of data", StringComparison.Ordinal)
            || error.Message.Contains("end of the data", StringComparison.Ordinal);
        // A cut file is wrong where it ends, wherever the value that was cut began.
        if (cut) return new(_file, PlaceAt(_bytes.Length), _open.TryPeek(out var open) ? DesignFilesFindings.FileIsCutOff(open.Line,
            open.Column) : DesignFilesFindings.FileIsEmpty(_what), error);
        return new(_file, PlaceAt(offset), Plainly(Encoding.UTF8.GetString(_bytes.AsSpan(offset, Math.Min(40, _bytes.Length - offset))),
            error), error);
    }

    private static string Plainly(string rest, JsonException error)
    {
        if (error.Message.Contains("depth", StringComparison.Ordinal)) return DesignFilesFindings.TooDeep(DeepestText);
        if ("“”„‟‘’‚".Contains(rest[0])) return DesignFilesFindings.CurlyQuote();
        var word = string.Concat(rest.TakeWhile(c => char.IsLetterOrDigit(c) || c is '-' or '+' or '.'));
        return word is "NaN" or "Infinity" or "-Infinity" or "nan" or "inf" ? DesignFilesFindings.NoNumber(word)
            : DesignFilesFindings.NotJson($"\"{(word.Length > 0 ? word : rest[..1])}\"");
    }

    private TreeNode Value(ref Utf8JsonReader reader)
    {
        var at = PlaceAt(reader.TokenStartIndex);
        TreeNode value;
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                _open.Push(at);
                value = Members(ref reader, at);
                _open.Pop();
                break;
            case JsonTokenType.StartArray:
                _open.Push(at);
                value = Items(ref reader, at);
                _open.Pop();
                break;
            case JsonTokenType.String:
                value = new TreeNode.Text(at, Letters(ref reader, at));
                break;
            default:
                value = new TreeNode.Literal(at, Encoding.UTF8.GetString(reader.ValueSpan), reader.TokenType);
                break;
        }

        _lastLine = PlaceAt(reader.BytesConsumed).Line;
        return value;
    }

    private TreeNode.Members Members(ref Utf8JsonReader reader, Place at)
    {
        List<TreeNode.Member> members = [];
        var keys = new Dictionary<string, Place>(StringComparer.Ordinal);
        List<string> above = [];
        for (Next(ref reader); reader.TokenType != JsonTokenType.EndObject; Next(ref reader))
        {
            if (reader.TokenType == JsonTokenType.Comment)
            {
                if (IsBehind(ref reader, members.Count) && members[^1].Value.After is null)
                    members[^1] = members[^1] with { Value = members[^1].Value with { After = Remark(ref reader) } };
                else above.Add(Remark(ref reader));
                continue;
            }

            var keyAt = PlaceAt(reader.TokenStartIndex);
            var key = Letters(ref reader, keyAt);
            if (!keys.TryAdd(key, keyAt))
                _mistakes.Add(new(keyAt.Line, keyAt.Column, key, DesignFilesFindings.KeyStandsTwice(key, keys[key].Line,
                    keys[key].Column)));
            Next(ref reader);
            while (reader.TokenType == JsonTokenType.Comment)
            {
                above.Add(Remark(ref reader));
                Next(ref reader);
            }

            members.Add(new(key, keyAt, Value(ref reader) with { Before = [.. above] }));
            above.Clear();
        }

        return new(at, members) { Last = above };
    }

    private TreeNode.Items Items(ref Utf8JsonReader reader, Place at)
    {
        List<TreeNode> items = [];
        List<string> above = [];
        for (Next(ref reader); reader.TokenType != JsonTokenType.EndArray; Next(ref reader))
        {
            if (reader.TokenType != JsonTokenType.Comment)
            {
                items.Add(Value(ref reader) with { Before = [.. above] });
                above.Clear();
            }
            else if (IsBehind(ref reader, items.Count)
                && items[^1].After is null) items[^1] = items[^1] with { After = Remark(ref reader) };
            else above.Add(Remark(ref reader));
        }

        return new(at, items) { Last = above };
    }

    // A remark behind a value on the value's line belongs to the value; every other one to what comes next.
    private bool IsBehind(ref Utf8JsonReader reader, int before) =>
        before > 0 && PlaceAt(reader.TokenStartIndex).Line == _lastLine && !reader.ValueSpan.Contains((byte)'\n');

    private string Remark(ref Utf8JsonReader reader)
    {
        var text = reader.GetComment().Replace("\r", "", StringComparison.Ordinal);
        var start = (int)reader.TokenStartIndex;
        var isBlock = _bytes.AsSpan(start, Math.Min(2, _bytes.Length - start)).SequenceEqual("/*"u8);
        return isBlock ? $"/*{text}*/" : $"//{text}".TrimEnd();
    }

    private string Letters(ref Utf8JsonReader reader, Place at)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException error)
        {
            throw new DesignFileException(_file, at, DesignFilesFindings.NotUtf8(), error);
        }
    }

    private Place PlaceAt(long offset)
    {
        var at = (int)Math.Min(offset, _bytes.Length);
        var line = Array.BinarySearch(_lineStarts, at);
        if (line < 0) line = ~line - 1;
        // Places are asked for from the first to the last: letters are counted on from the place before, where that is on the same line.
        var (from, letters) = _counted.Offset >= _lineStarts[line] && _counted.Offset <= at ? _counted : (_lineStarts[line], 0);
        _counted = (at, letters + Encoding.UTF8.GetCharCount(_bytes, from, at - from));
        return new(line + 1, 1 + _counted.Letters);
    }
}
