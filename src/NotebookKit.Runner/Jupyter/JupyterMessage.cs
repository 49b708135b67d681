using System.Globalization;
using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Jupyter;

/// <summary>One message of the Jupyter protocol.</summary>
/// <param name="Identities">Routing frames before the delimiter.</param>
/// <param name="Header">Its header.</param>
/// <param name="Parent">Header of the message that caused it; empty where none did.</param>
/// <param name="Metadata">Its metadata.</param>
/// <param name="Content">Its content.</param>
/// <param name="Buffers">Raw binary frames after the content.</param>
internal sealed record JupyterMessage(
    IReadOnlyList<byte[]> Identities, JsonObject Header, JsonObject Parent, JsonObject Metadata, JsonObject Content,
        IReadOnlyList<byte[]> Buffers)
{
    /// <summary>Version of the protocol spoken.</summary>
    public const string ProtocolVersion = "5.3";

    /// <summary>Type of message.</summary>
    public string Type => TextOf(Header, "msg_type");

    /// <summary>Id of the message.</summary>
    public string Id => TextOf(Header, "msg_id");

    /// <summary>Makes a message of the kernel's own.</summary>
    /// <param name="session">The kernel's session id.</param>
    /// <param name="type">Type of message.</param>
    /// <param name="parent">Message that caused it; none where none did.</param>
    /// <param name="content">Its content.</param>
    /// <param name="identities">Routing frames.</param>
    public static JupyterMessage New(string session, string type, JupyterMessage? parent, JsonObject content,
        params IReadOnlyList<byte[]> identities)
    {
        var header = new JsonObject
        {
            ["msg_id"] = Guid.NewGuid().ToString(),
            ["session"] = session,
            ["username"] = "kernel",
            ["date"] = DateTime.UtcNow.ToString("O", CultureInfo.InvariantCulture),
            ["msg_type"] = type,
            ["version"] = ProtocolVersion,
        };
        return new(identities, header, parent?.Header.DeepClone().AsObject() ?? [], [], content, []);
    }

    /// <summary>A text member of a JSON object; empty where there is none.</summary>
    /// <param name="json">Object.</param>
    /// <param name="name">Member.</param>
    public static string TextOf(JsonObject json, string name) =>
        json[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : "";

    /// <summary>A yes-or-no member of a JSON object.</summary>
    /// <param name="json">Object.</param>
    /// <param name="name">Member.</param>
    /// <param name="absent">What it is where there is none.</param>
    public static bool FlagOf(JsonObject json, string name, bool absent) =>
        json[name] is JsonValue value && value.TryGetValue<bool>(out var flag) ? flag : absent;

    /// <summary>A whole-number member of a JSON object.</summary>
    /// <param name="json">Object.</param>
    /// <param name="name">Member.</param>
    /// <param name="absent">What it is where there is none.</param>
    public static int NumberOf(JsonObject json, string name, int absent) =>
        json[name] is JsonValue value && value.TryGetValue<int>(out var number) ? number : absent;
}
