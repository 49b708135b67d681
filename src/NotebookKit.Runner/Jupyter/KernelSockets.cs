using NetMQ;
using NetMQ.Sockets;

namespace NotebookKit.Runner.Jupyter;

/// <summary>The five sockets of a kernel. One thread owns them all; messages go out through a queue.</summary>
internal sealed class KernelSockets : IDisposable
{
    private readonly RouterSocket shell = new();
    private readonly RouterSocket control = new();
    private readonly RouterSocket stdin = new();
    private readonly PublisherSocket iopub = new();
    private readonly RouterSocket heartbeat = new();
    private readonly NetMQQueue<(NetMQSocket Socket, IReadOnlyList<byte[]> Frames)> outgoing = new();
    private readonly NetMQPoller poller;
    private readonly WireFormat wire;

    /// <summary>Opens the sockets at the addresses of the connection file, and nowhere else.</summary>
    /// <param name="connection">Connection file.</param>
    /// <param name="received">Told every message that is signed right; must not block.</param>
    /// <exception cref="ConnectionException">An address can't be had.</exception>
    public KernelSockets(ConnectionFile connection, Action<SocketKind, JupyterMessage> received)
    {
        wire = new WireFormat(connection.Key);
        // A slow reader must not lose outputs: no limit on what waits for it.
        iopub.Options.SendHighWatermark = 0;
        Bind(shell, connection, connection.ShellPort);
        Bind(control, connection, connection.ControlPort);
        Bind(stdin, connection, connection.StdinPort);
        Bind(iopub, connection, connection.IopubPort);
        Bind(heartbeat, connection, connection.HeartbeatPort);

        Listen(shell, SocketKind.Shell, received);
        Listen(control, SocketKind.Control, received);
        Listen(stdin, SocketKind.Stdin, received);
        heartbeat.ReceiveReady += (_, _) =>
        {
            if (Receive(heartbeat) is { } beat) Send(heartbeat, beat);
        };
        outgoing.ReceiveReady += (_, _) =>
        {
            while (outgoing.TryDequeue(out var next, TimeSpan.Zero)) Send(next.Socket, next.Frames);
        };
        poller = [shell, control, stdin, heartbeat, outgoing];
        poller.RunAsync("sockets");
    }

    /// <summary>Sends a message; returns at once.</summary>
    /// <param name="kind">Socket.</param>
    /// <param name="message">Message.</param>
    public void Send(SocketKind kind, JupyterMessage message) => outgoing.Enqueue((Socket(kind), wire.Write(message)));

    /// <summary>Sends what waits, then closes.</summary>
    public void Dispose()
    {
        // The queue is emptied by the socket thread; what it handed over gets a moment to leave the machine.
        var deadline = DateTime.UtcNow.AddSeconds(1);
        while (!outgoing.IsEmpty && DateTime.UtcNow < deadline) Thread.Sleep(10);
        poller.Stop();
        foreach (NetMQSocket socket in new NetMQSocket[] { shell, control, stdin, iopub, heartbeat })
        {
            socket.Options.Linger = TimeSpan.FromSeconds(1);
            socket.Dispose();
        }

        poller.Dispose();
        outgoing.Dispose();
    }

    private static void Bind(NetMQSocket socket, ConnectionFile connection, int port)
    {
        var address = connection.AddressOf(port);
        try
        {
            socket.Bind(address);
        }
        catch (NetMQException e)
        {
            throw new ConnectionException($"The kernel can't listen at {address}: {e.Message} Another program may hold that port; start "
                + "the kernel again.");
        }
    }

    private static void Send(NetMQSocket socket, IReadOnlyList<byte[]> frames)
    {
        for (var i = 0; i < frames.Count; i++) socket.SendFrame(frames[i], more: i < frames.Count - 1);
    }

    private static List<byte[]>? Receive(NetMQSocket socket)
    {
        List<byte[]> frames = [];
        return socket.TryReceiveMultipartBytes(ref frames) ? frames : null;
    }

    private void Listen(NetMQSocket socket, SocketKind kind, Action<SocketKind, JupyterMessage> received)
        => socket.ReceiveReady += (_, _) =>
    {
        while (Receive(socket) is { } frames)
        {
            if (wire.Read(frames) is { } message) received(kind, message);
        }
    };

    private NetMQSocket Socket(SocketKind kind) => kind switch
    {
        SocketKind.Shell => shell,
        SocketKind.Control => control,
        SocketKind.Stdin => stdin,
        _ => iopub,
    };
}
