using System.Text;
using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Sends the kernel's messages: replies to one front-end, publications to all.</summary>
/// <param name="send">Puts a message on a socket.</param>
internal sealed class KernelOutlet(Action<SocketKind, JupyterMessage> send)
{
    /// <summary>The kernel's session id.</summary>
    public string Session { get; } = Guid.NewGuid().ToString();

    /// <summary>Answers a request.</summary>
    /// <param name="socket">Socket it came by.</param>
    /// <param name="request">Request.</param>
    /// <param name="content">Content of the answer.</param>
    public void Reply(SocketKind socket, JupyterMessage request, JsonObject content)
    {
        content["status"] ??= "ok";
        send(socket, JupyterMessage.New(Session, request.Type.Replace("_request", "_reply", StringComparison.Ordinal), request, content,
            request.Identities));
    }

    /// <summary>Tells everybody.</summary>
    /// <param name="type">Type of message.</param>
    /// <param name="parent">Message that caused it; none where none did.</param>
    /// <param name="content">Content.</param>
    /// <param name="metadata">Metadata; none where there is none.</param>
    public void Publish(string type, JupyterMessage? parent, JsonObject content, JsonObject? metadata = null) =>
        send(SocketKind.Iopub, JupyterMessage.New(Session, type, parent, content, Encoding.ASCII.GetBytes($"kernel.{Session}.{type}"))
            with { Metadata = metadata ?? [] });

    /// <summary>Tells everybody whether the kernel works on a request.</summary>
    /// <param name="state">"busy", "idle" or "starting".</param>
    /// <param name="parent">Request.</param>
    public void Status(string state, JupyterMessage? parent) => Publish("status", parent, new JsonObject { ["execution_state"] = state });

    /// <summary>Asks the front-end that made a request to let its reader type.</summary>
    /// <param name="request">Request.</param>
    /// <param name="content">Content of the question.</param>
    public void Ask(JupyterMessage request, JsonObject content) =>
        send(SocketKind.Stdin, JupyterMessage.New(Session, "input_request", request, content, request.Identities));
}
