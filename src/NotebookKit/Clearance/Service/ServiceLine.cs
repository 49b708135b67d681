using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace NotebookKit.Clearance.Service;

/// <summary>
/// Spelling of the lines of a service record. Each is one JSON object whose last member, "check", is the SHA-256 of all bytes before that
/// member; each but the first
/// bears the SHA-256 of the whole line before it as "previous". Line feeds are not part of a line.
/// </summary>
internal static class ServiceLine
{
    public const string Format = "vessel service record";
    public const int Version = 1;
    public const string TimeForm = "yyyy-MM-dd'T'HH:mm:ss'Z'";
    private const string CheckStart = ",\"check\":\"";
    private const string CheckEnd = "\"}";
    private const int CheckLength = 10 + 64 + 2;

    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The first line.</summary>
    public static byte[] Header(string vessel, string serial) => Sealed(json =>
    {
        json.WriteString("format", Format);
        json.WriteNumber("version", Version);
        json.WriteString("vessel", vessel);
        json.WriteString("serial", serial);
    });

    /// <summary>The line of an event.</summary>
    public static byte[] Event(string vessel, string serial, int sequence, DateTimeOffset at, ServiceEvent happened, int removedBytes,
        string previous) => Sealed(json =>
    {
        json.WriteNumber("sequence", sequence);
        json.WriteString("at", at.UtcDateTime.ToString(TimeForm, CultureInfo.InvariantCulture));
        json.WriteString("vessel", vessel);
        json.WriteString("serial", serial);
        json.WriteString("kind", happened.Kind);
        json.WriteStartObject("data");
        foreach (var (name, value) in happened.Data) json.WriteString(name, value);
        json.WriteEndObject();
        json.WriteString("by", happened.By);
        json.WriteString("notes", happened.Notes);
        if (removedBytes > 0) json.WriteNumber("removed-bytes", removedBytes);
        json.WriteString("previous", previous);
    });

    /// <summary>SHA-256 in lower-case hexadecimal. Source: FIPS 180-4, as the framework computes it.</summary>
    public static string Fingerprint(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Whether the line is whole and as it was written.</summary>
    public static bool IsWhole(ReadOnlySpan<byte> line) =>
        line.Length > CheckLength && line[^CheckLength..].SequenceEqual(Check(line[..^CheckLength]));

    private static byte[] Check(ReadOnlySpan<byte> before) => Encoding.ASCII.GetBytes(CheckStart + Fingerprint(before) + CheckEnd);

    private static byte[] Sealed(Action<Utf8JsonWriter> members)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            members(json);
            json.WriteEndObject();
        }

        var open = stream.ToArray().AsSpan(..^1);
        return [.. open, .. Check(open)];
    }
}
