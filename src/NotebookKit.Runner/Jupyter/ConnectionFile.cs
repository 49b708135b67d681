using System.Text.Json;
using System.Text.Json.Serialization;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Where a front-end wants the kernel to listen, and how messages are signed: the connection file of the Jupyter
/// protocol.</summary>
internal sealed record ConnectionFile
{
    private const string SignatureSchemeKnown = "hmac-sha256";

    /// <summary>Transport; only "tcp" is spoken.</summary>
    [JsonPropertyName("transport")]
    public string Transport { get; init; } = "tcp";

    /// <summary>Address to listen at, and no other.</summary>
    [JsonPropertyName("ip")]
    public required string Ip { get; init; }

    /// <summary>Port for requests.</summary>
    [JsonPropertyName("shell_port")]
    public required int ShellPort { get; init; }

    /// <summary>Port for interrupt and shutdown.</summary>
    [JsonPropertyName("control_port")]
    public required int ControlPort { get; init; }

    /// <summary>Port for what everybody may hear.</summary>
    [JsonPropertyName("iopub_port")]
    public required int IopubPort { get; init; }

    /// <summary>Port for asking the reader.</summary>
    [JsonPropertyName("stdin_port")]
    public required int StdinPort { get; init; }

    /// <summary>Port for the heartbeat.</summary>
    [JsonPropertyName("hb_port")]
    public required int HeartbeatPort { get; init; }

    /// <summary>Key that signs messages; empty for none.</summary>
    [JsonPropertyName("key")]
    public string Key { get; init; } = "";

    /// <summary>How messages are signed.</summary>
    [JsonPropertyName("signature_scheme")]
    public string SignatureScheme { get; init; } = SignatureSchemeKnown;

    /// <summary>Reads the file.</summary>
    /// <param name="path">File.</param>
    /// <exception cref="ConnectionException">It can't be read, or asks for something that isn't spoken.</exception>
    public static ConnectionFile Read(string path)
    {
        ConnectionFile? file;
        try
        {
            file = JsonSerializer.Deserialize<ConnectionFile>(File.ReadAllText(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
        {
            throw new ConnectionException($"The connection file {path} can't be used: {e.Message} A notebook front-end makes one and "
                + "starts the kernel with it.");
        }

        if (file is null) throw new ConnectionException($"The connection file {path} is empty.");
        if (file.Transport != "tcp") throw new ConnectionException($"The connection file asks for transport {file.Transport}; only "
            + "tcp is spoken.");
        if (file.SignatureScheme != SignatureSchemeKnown)
            throw new ConnectionException($"The connection file asks for signatures by {file.SignatureScheme}; only "
                + $"{SignatureSchemeKnown} is known.");
        return file;
    }

    /// <summary>The address of a port as sockets take it.</summary>
    /// <param name="port">Port.</param>
    public string AddressOf(int port) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Transport}://{Ip}:{port}");
}
