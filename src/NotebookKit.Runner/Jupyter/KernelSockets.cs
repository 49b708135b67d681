using NetMQ;
using NetMQ.Sockets;

namespace NotebookKit.Runner.Jupyter;

/// <summary>The five sockets of a kernel. One thread owns them all; messages go out through a queue.</summary>
internal sealed class KernelSockets : IDisposable
{
    private readonly RouterSocket _shell = new();
    private readonly RouterSocket _control = new();
    private readonly RouterSocket _stdin = new();
    private readonly PublisherSocket _iopub = new();
    private readonly RouterSocket _heartbeat = new();
    private readonly NetMQQueue<(NetMQSocket Socket, IReadOnlyList<byte[]> Frames)> _outgoing = new();
    private readonly NetMQPoller _poller;
    private readonly WireFormat _wire;

    /// <summary>Opens the sockets at the addresses of the connection file, and nowhere else.</summary>
    /// <param name="connection">Connection file.</param>
    /// <param name="received">Told every message that is signed right; must not block.</param>
    /// <exception cref="ConnectionException">An address can't be had.</exception>
    public KernelSockets(ConnectionFile connection, Action<SocketKind, JupyterMessage> received)
    {
        _wire = new WireFormat(connection.Key);
        // A slow reader must lose neither outputs nor replies: no limit on what waits for it.
        foreach (NetMQSocket socket in new NetMQSocket[] { _shell, _control, _stdin, _iopub }) socket.Options.SendHighWatermark = 0;
        Bind(_shell, connection, connection.ShellPort);
        Bind(_control, connection, connection.ControlPort);
        Bind(_stdin, connection, connection.StdinPort);
        Bind(_iopub, connection, connection.IopubPort);
        Bind(_heartbeat, connection, connection.HeartbeatPort);

        Listen(_shell, SocketKind.Shell, received);
        Listen(_control, SocketKind.Control, received);
        Listen(_stdin, SocketKind.Stdin, received);
        _heartbeat.ReceiveReady += (_, _) =>
        {
            if (Receive(_heartbeat) is { } beat) Send(_heartbeat, beat);
        };
        _outgoing.ReceiveReady += (_, _) =>
        {
            while (_outgoing.TryDequeue(out var next, TimeSpan.Zero)) Send(next.Socket, next.Frames);
        };
        _poller = [_shell, _control, _stdin, _heartbeat, _outgoing];
        _poller.RunAsync("sockets");
    }

    /// <summary>Sends a message; returns at once.</summary>
    /// <param name="kind">Socket.</param>
    /// <param name="message">Message.</param>
    public void Send(SocketKind kind, JupyterMessage message) => _outgoing.Enqueue((Socket(kind), _wire.Write(message)));

    /// <summary>Sends what waits, then closes.</summary>
    public void Dispose()
    {
        // The queue is emptied by the socket thread; what it handed over gets a moment to leave the machine.
        var deadline = DateTime.UtcNow.AddSeconds(1);
        while (!_outgoing.IsEmpty && DateTime.UtcNow < deadline) Thread.Sleep(10);
        _poller.Stop();
        foreach (NetMQSocket socket in new NetMQSocket[] { _shell, _control, _stdin, _iopub, _heartbeat })
        {
            socket.Options.Linger = TimeSpan.FromSeconds(1);
            socket.Dispose();
        }

        _poller.Dispose();
        _outgoing.Dispose();
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
            if (_wire.Read(frames) is { } message) received(kind, message);
        }
    };

    private NetMQSocket Socket(SocketKind kind) => kind switch
    {
        SocketKind.Shell => _shell,
        SocketKind.Control => _control,
        SocketKind.Stdin => _stdin,
        _ => _iopub,
    };
}
