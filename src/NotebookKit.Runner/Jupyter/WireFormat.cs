using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using System.Text.Unicode;

namespace NotebookKit.Runner.Jupyter;

/// <summary>
/// Messages as frames on a socket: routing frames, a delimiter, the signature, four JSON parts, raw buffers.
/// Source: Jupyter project, Messaging in Jupyter, version 5.3, "The wire protocol".
/// </summary>
/// <param name="key">Key that signs messages; empty for none.</param>
internal sealed partial class WireFormat(string key)
{
    private const int PartCount = 4;
    private static readonly byte[] Delimiter = "<IDS|MSG>"u8.ToArray();
    // An output may be a deep piece of JSON itself, and lies some levels down in its message.
    private static readonly JsonSerializerOptions Layout = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, MaxDepth = 256 };
    private static readonly JsonDocumentOptions Reading = new() { AllowDuplicateProperties = false };
    private readonly byte[] _keyBytes = Encoding.UTF8.GetBytes(key);

    /// <summary>The message in a list of frames; none where they aren't one, or its signature is wrong.</summary>
    /// <param name="frames">Frames as received.</param>
    public JupyterMessage? Read(IReadOnlyList<byte[]> frames)
    {
        var at = 0;
        while (at < frames.Count && !frames[at].AsSpan().SequenceEqual(Delimiter)) at++;
        if (frames.Count < at + 2 + PartCount) return null;
        var parts = frames.Skip(at + 2).Take(PartCount).ToList();
        if (_keyBytes.Length > 0 && !CryptographicOperations.FixedTimeEquals(Sign(parts), frames[at + 1])) return null;
        try
        {
            return Parse(parts[0]) is { } header && Parse(parts[1]) is { } parent && Parse(parts[2]) is { } metadata
                && Parse(parts[3]) is { } content
                ? new JupyterMessage([.. frames.Take(at)], header, parent, metadata, content, [.. frames.Skip(at + 2 + PartCount)])
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The frames of a message, signed.</summary>
    /// <param name="message">Message.</param>
    public IReadOnlyList<byte[]> Write(JupyterMessage message)
    {
        byte[][] parts = [Text(message.Header), Text(message.Parent), Text(message.Metadata), Text(message.Content)];
        return [.. message.Identities, Delimiter, _keyBytes.Length > 0 ? Sign(parts) : [], .. parts, .. message.Buffers];
    }

    // Parsed JSON is looked into late, when nobody expects that a name stands twice or a text isn't one: what is wrong has to show here.
    private static JsonObject? Parse(byte[] part)
    {
        if (!Utf8.IsValid(part)) return null;
        var whole = part.AsSpan().IndexOf("\\ud"u8) < 0 && part.AsSpan().IndexOf("\\uD"u8) < 0;
        return JsonNode.Parse(whole ? part : Mended(part), null, Reading) as JsonObject;
    }

    // A front-end may cut an escaped character in half; a text in C# terms has no such thing.
    private static byte[] Mended(byte[] part) =>
        Encoding.UTF8.GetBytes(Escape().Replace(Encoding.UTF8.GetString(part), m => m.Groups["half"].Success ? @"\ufffd" : m.Value));

    private static byte[] Text(JsonObject part) => JsonSerializer.SerializeToUtf8Bytes(part, Layout);

    private byte[] Sign(IEnumerable<byte[]> parts)
    {
        using var hash = IncrementalHash.CreateHMAC(HashAlgorithmName.SHA256, _keyBytes);
        foreach (var part in parts) hash.AppendData(part);
        return Encoding.ASCII.GetBytes(Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    // Whole pairs and other escapes are passed over, so that what is left of the two halves stands alone.
    [GeneratedRegex(@"\\(?:u[dD][89abAB][0-9a-fA-F]{2}\\u[dD][c-fC-F][0-9a-fA-F]{2}|(?<half>u[dD][89a-fA-F][0-9a-fA-F]{2})|.)")]
    private static partial Regex Escape();
}
