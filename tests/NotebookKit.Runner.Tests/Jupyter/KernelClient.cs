using System.Net;
using System.Net.Sockets;
using System.Text.Json.Nodes;
using NetMQ;
using NetMQ.Sockets;
using NotebookKit.Runner.Jupyter;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>A client that speaks to a kernel over real sockets.</summary>
internal class KernelClient : IDisposable
{
    private readonly WireFormat wire;
    private readonly DealerSocket shell = new();
    private readonly DealerSocket control = new();
    private readonly DealerSocket stdin = new();
    private readonly SubscriberSocket iopub = new();

    public KernelClient(ConnectionFile connection)
    {
        Connection = connection;
        wire = new WireFormat(connection.Key);
        foreach (var socket in new NetMQSocket[] { shell, stdin }) socket.Options.Identity = "test client"u8.ToArray();
        shell.Connect(connection.AddressOf(connection.ShellPort));
        control.Connect(connection.AddressOf(connection.ControlPort));
        stdin.Connect(connection.AddressOf(connection.StdinPort));
        iopub.Connect(connection.AddressOf(connection.IopubPort));
        iopub.SubscribeToAnyTopic();
    }

    public ConnectionFile Connection { get; }

    /// <summary>A connection to this machine alone, on ports that are free.</summary>
    public static ConnectionFile NewConnection()
    {
        // All held at once, so that no two are the same.
        var held = Enumerable.Range(0, 5).Select(_ => new TcpListener(IPAddress.Loopback, 0)).ToList();
        foreach (var listener in held) listener.Start();
        int[] ports = [.. held.Select(l => ((IPEndPoint)l.LocalEndpoint).Port)];
        foreach (var listener in held) listener.Dispose();
        return new()
        {
            Ip = "127.0.0.1", ShellPort = ports[0], ControlPort = ports[1], IopubPort = ports[2], StdinPort = ports[3],
            HeartbeatPort = ports[4], Key = Guid.NewGuid().ToString(),
        };
    }

    public static JsonObject Execute(string code, bool asks = false) => new() { ["code"] = code, ["silent"] = false,
        ["store_history"] = true, ["stop_on_error"] = true, ["allow_stdin"] = asks };

    public string Send(string type, JsonObject content, bool viaControl = false, JsonObject? metadata = null)
    {
        var message = JupyterMessage.New("client", type, null, content) with { Metadata = metadata ?? [] };
        SendFrames(viaControl ? control : shell, wire.Write(message));
        return message.Id;
    }

    public void SendRaw(IReadOnlyList<byte[]> frames) => SendFrames(shell, frames);

    public void AnswerInput(string text) =>
        SendFrames(stdin, wire.Write(JupyterMessage.New("client", "input_reply", null, new JsonObject { ["value"] = text })));

    public JupyterMessage Question() => Receive(stdin);

    /// <summary>The reply to a request, others skipped.</summary>
    public JsonObject Reply(string id, bool viaControl = false)
    {
        while (true)
        {
            var message = Receive(viaControl ? control : shell);
            if (JupyterMessage.TextOf(message.Parent, "msg_id") == id) return message.Content;
        }
    }

    /// <summary>Everything published for a request until the kernel is idle again.</summary>
    public List<JupyterMessage> Published(string id)
    {
        var heard = new List<JupyterMessage>();
        while (true)
        {
            var message = Receive(iopub);
            if (JupyterMessage.TextOf(message.Parent, "msg_id") != id) continue;
            heard.Add(message);
            if (message.Type == "status" && JupyterMessage.TextOf(message.Content, "execution_state") == "idle") return heard;
        }
    }

    /// <summary>The next message of a type that is published for a request.</summary>
    public JupyterMessage NextPublished(string id, string type)
    {
        while (true)
        {
            var message = Receive(iopub);
            if (message.Type == type && JupyterMessage.TextOf(message.Parent, "msg_id") == id) return message;
        }
    }

    public (JsonObject Reply, List<JupyterMessage> Published) Run(string code)
    {
        var id = Send("execute_request", Execute(code));
        return (Reply(id), Published(id));
    }

    public string? Value(string code) =>
        (string?)Run(code).Published.Single(m => m.Type == "execute_result").Content["data"]!["text/plain"];

    public void Dispose()
    {
        foreach (var socket in new NetMQSocket[] { shell, control, stdin, iopub }) socket.Dispose();
        GC.SuppressFinalize(this);
    }

    // A subscriber that has just connected hears nothing for a moment; a kernel-info request shows when it does.
    public void WaitUntilHeard()
    {
        var waited = System.Diagnostics.Stopwatch.StartNew();
        while (waited.Elapsed < Patience.Limit)
        {
            Reply(Send("kernel_info_request", []));
            List<byte[]> frames = [];
            if (iopub.TryReceiveMultipartBytes(TimeSpan.FromMilliseconds(100), ref frames)) return;
        }

        throw new TimeoutException("Nothing was heard from the kernel.");
    }

    private static void SendFrames(NetMQSocket socket, IReadOnlyList<byte[]> frames)
    {
        for (var i = 0; i < frames.Count; i++) socket.SendFrame(frames[i], more: i < frames.Count - 1);
    }

    private JupyterMessage Receive(NetMQSocket socket)
    {
        List<byte[]> frames = [];
        return socket.TryReceiveMultipartBytes(Patience.Limit, ref frames)
            ? wire.Read(frames) ?? throw new InvalidDataException("The kernel sent something that is no signed message.")
            : throw new TimeoutException("The kernel said nothing.");
    }
}
