using System.Text.Json.Nodes;
using System.Threading.Channels;

namespace NotebookKit.Runner.Jupyter;

/// <summary>
/// The kernel's front: takes a front-end's requests and answers them, one after another on the shell socket, at once on the control socket.
/// Whatever a cell does happens in a worker behind it.
/// Source: Jupyter project, Messaging in Jupyter, version 5.3.
/// </summary>
internal sealed class KernelServer : IAsyncDisposable
{
    private readonly Channel<JupyterMessage> _shell = Channel.CreateUnbounded<JupyterMessage>();
    private readonly Channel<JupyterMessage> _control = Channel.CreateUnbounded<JupyterMessage>();
    private readonly CancellationTokenSource _stop = new();
    private readonly InputHistory _history = new();
    private readonly KernelSession _session;
    private readonly KernelSockets _sockets;
    private readonly KernelOutlet _outlet;
    private readonly ReaderQuestions _questions;
    private readonly WidgetHandler _widgets;
    private readonly ExecuteHandler _execute;
    private readonly LanguageHandler _language;

    /// <summary>Opens the sockets and starts the worker.</summary>
    /// <param name="connection">Connection file.</param>
    /// <param name="folder">Folder that relative paths in cells start from.</param>
    public KernelServer(ConnectionFile connection, string folder)
    {
        _sockets = new KernelSockets(connection, Receive);
        _outlet = new KernelOutlet(_sockets.Send);
        _widgets = new WidgetHandler(_outlet);
        _session = new KernelSession(folder, _widgets.Take);
        _questions = new ReaderQuestions(_outlet);
        _execute = new ExecuteHandler(_session, _outlet, _history, _questions, _widgets);
        _language = new LanguageHandler(_session);
    }

    /// <summary>Serves until a front-end asks to shut down, or the token does.</summary>
    /// <param name="cancellation">Shuts down.</param>
    public async Task ServeAsync(CancellationToken cancellation)
    {
        using var link = cancellation.Register(_stop.Cancel);
        _outlet.Status("starting", null);
        var serving = Task.WhenAll(ServeAsync(SocketKind.Shell, _shell.Reader, HandleShellAsync),
            ServeAsync(SocketKind.Control, _control.Reader, HandleControlAsync));
        await Task.WhenAny(serving, Task.Delay(Timeout.Infinite, _stop.Token));
        if (serving.IsFaulted) await serving;
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        _sockets.Dispose();
        await _session.DisposeAsync();
        _stop.Dispose();
    }

    // The socket thread may hear a front-end before the constructor has ended: what it hears waits in the queues.
    private void Receive(SocketKind socket, JupyterMessage message)
    {
        _widgets?.Arrived(message);
        if (socket == SocketKind.Stdin) _questions?.Answer(message);
        else (socket == SocketKind.Control ? _control : _shell).Writer.TryWrite(message);
    }

    private async Task ServeAsync(SocketKind socket, ChannelReader<JupyterMessage> requests, Func<JupyterMessage, Task> handle)
    {
        await foreach (var request in requests.ReadAllAsync(_stop.Token))
        {
            _outlet.Status("busy", request);
            try
            {
                await handle(request);
            }
#pragma warning disable CA1031
    // one request that goes wrong must not end the kernel: it is answered, and said where the front-end keeps its log
            catch (Exception e)
#pragma warning restore CA1031
            {
                await Console.Error.WriteLineAsync($"{request.Type}: {e}");
                _outlet.Reply(socket, request, new JsonObject { ["status"] = "error", ["ename"] = e.GetType().Name, ["evalue"] = e.Message,
                    ["traceback"] = new JsonArray() });
            }

            _outlet.Status("idle", request);
            if (request.Type == "shutdown_request") await _stop.CancelAsync();
        }
    }

    private async Task HandleShellAsync(JupyterMessage request)
    {
        _widgets.Current = request;
        switch (request.Type)
        {
            case "execute_request":
                List<JupyterMessage> dropped = [];
                await _execute.HandleAsync(request, () => dropped = TakeWaitingCells());
                foreach (var cell in dropped) Abort(cell);
                break;
            case "complete_request":
                _outlet.Reply(SocketKind.Shell, request, await _language.CompleteAsync(request.Content));
                break;
            case "inspect_request":
                _outlet.Reply(SocketKind.Shell, request, await _language.InspectAsync(request.Content));
                break;
            case "is_complete_request":
                _outlet.Reply(SocketKind.Shell, request, Completeness.Answer(JupyterMessage.TextOf(request.Content, "code")));
                break;
            case "history_request":
                _outlet.Reply(SocketKind.Shell, request, _history.Answer(request.Content));
                break;
            case "comm_info_request":
                _outlet.Reply(SocketKind.Shell, request, _widgets.Info(request.Content));
                break;
            case "comm_open":
                _widgets.Open(request);
                break;
            case "comm_close":
                _widgets.Close(request);
                break;
            case "comm_msg":
                await _widgets.HandleAsync(request, _session);
                break;
            default:
                HandleAnywhere(SocketKind.Shell, request);
                break;
        }
    }

    private Task HandleControlAsync(JupyterMessage request)
    {
        HandleAnywhere(SocketKind.Control, request);
        return Task.CompletedTask;
    }

    private void HandleAnywhere(SocketKind socket, JupyterMessage request)
    {
        switch (request.Type)
        {
            case "kernel_info_request":
                _outlet.Reply(socket, request, KernelInfo.Answer());
                break;
            case "interrupt_request":
                _execute.Interrupt();
                _widgets.Interrupt();
                _outlet.Reply(socket, request, []);
                break;
            case "shutdown_request":
                _outlet.Reply(socket, request, new JsonObject {
                    ["restart"] = JupyterMessage.FlagOf(request.Content, "restart", absent: false) });
                break;
        }
    }

    // A front-end that sent many cells at once doesn't want the rest run on a failure.
    private List<JupyterMessage> TakeWaitingCells()
    {
        List<JupyterMessage> cells = [];
        List<JupyterMessage> others = [];
        while (_shell.Reader.TryRead(out var waiting)) (waiting.Type == "execute_request" ? cells : others).Add(waiting);
        foreach (var other in others) _shell.Writer.TryWrite(other);
        return cells;
    }

    private void Abort(JupyterMessage cell)
    {
        _outlet.Status("busy", cell);
        _outlet.Reply(SocketKind.Shell, cell, new JsonObject { ["status"] = "aborted", ["execution_count"] = 0 });
        _outlet.Status("idle", cell);
    }
}
