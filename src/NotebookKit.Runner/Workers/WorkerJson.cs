using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace NotebookKit.Runner.Workers;

/// <summary>The line format between front and worker.</summary>
internal static class WorkerJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        MaxDepth = 256,
    };

    /// <summary>One line, without its end.</summary>
    /// <typeparam name="T">Kind of message.</typeparam>
    /// <param name="message">Message.</param>
    public static string Write<T>(T message) => JsonSerializer.Serialize(message, Options);

    /// <summary>The message on a line; none where the line isn't one, such as text that native code printed.</summary>
    /// <typeparam name="T">Kind of message.</typeparam>
    /// <param name="line">Line without its end.</param>
    public static T? Read<T>(string line)
        where T : class
    {
        if (!line.StartsWith('{')) return null;
        try
        {
            return JsonSerializer.Deserialize<T>(line, Options);
        }
        catch (Exception e) when (e is JsonException or NotSupportedException)
        {
            return null;
        }
    }
}
