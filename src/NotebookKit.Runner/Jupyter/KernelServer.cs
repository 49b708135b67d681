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
    private readonly Channel<JupyterMessage> shell = Channel.CreateUnbounded<JupyterMessage>();
    private readonly Channel<JupyterMessage> control = Channel.CreateUnbounded<JupyterMessage>();
    private readonly CancellationTokenSource stop = new();
    private readonly InputHistory history = new();
    private readonly KernelSession session;
    private readonly KernelSockets sockets;
    private readonly KernelOutlet outlet;
    private readonly ReaderQuestions questions;
    private readonly WidgetHandler widgets;
    private readonly ExecuteHandler execute;
    private readonly LanguageHandler language;

    /// <summary>Opens the sockets and starts the worker.</summary>
    /// <param name="connection">Connection file.</param>
    /// <param name="folder">Folder that relative paths in cells start from.</param>
    public KernelServer(ConnectionFile connection, string folder)
    {
        sockets = new KernelSockets(connection, Receive);
        outlet = new KernelOutlet(sockets.Send);
        widgets = new WidgetHandler(outlet);
        session = new KernelSession(folder, widgets.Take);
        questions = new ReaderQuestions(outlet);
        execute = new ExecuteHandler(session, outlet, history, questions, widgets);
        language = new LanguageHandler(session);
    }

    /// <summary>Serves until a front-end asks to shut down, or the token does.</summary>
    /// <param name="cancellation">Shuts down.</param>
    public async Task ServeAsync(CancellationToken cancellation)
    {
        using var link = cancellation.Register(stop.Cancel);
        outlet.Status("starting", null);
        var serving = Task.WhenAll(ServeAsync(SocketKind.Shell, shell.Reader, HandleShellAsync),
            ServeAsync(SocketKind.Control, control.Reader, HandleControlAsync));
        await Task.WhenAny(serving, Task.Delay(Timeout.Infinite, stop.Token));
        if (serving.IsFaulted) await serving;
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        sockets.Dispose();
        await session.DisposeAsync();
        stop.Dispose();
    }

    // The socket thread may hear a front-end before the constructor has ended: what it hears waits in the queues.
    private void Receive(SocketKind socket, JupyterMessage message)
    {
        widgets?.Arrived(message);
        if (socket == SocketKind.Stdin) questions?.Answer(message);
        else (socket == SocketKind.Control ? control : shell).Writer.TryWrite(message);
    }

    private async Task ServeAsync(SocketKind socket, ChannelReader<JupyterMessage> requests, Func<JupyterMessage, Task> handle)
    {
        await foreach (var request in requests.ReadAllAsync(stop.Token))
        {
            outlet.Status("busy", request);
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
                outlet.Reply(socket, request, new JsonObject { ["status"] = "error", ["ename"] = e.GetType().Name, ["evalue"] = e.Message,
                    ["traceback"] = new JsonArray() });
            }

            outlet.Status("idle", request);
            if (request.Type == "shutdown_request") await stop.CancelAsync();
        }
    }

    private async Task HandleShellAsync(JupyterMessage request)
    {
        widgets.Current = request;
        switch (request.Type)
        {
            case "execute_request":
                if (await execute.HandleAsync(request)) DropWaiting();
                break;
            case "complete_request":
                outlet.Reply(SocketKind.Shell, request, await language.CompleteAsync(request.Content));
                break;
            case "inspect_request":
                outlet.Reply(SocketKind.Shell, request, await language.InspectAsync(request.Content));
                break;
            case "is_complete_request":
                outlet.Reply(SocketKind.Shell, request, Completeness.Answer(JupyterMessage.TextOf(request.Content, "code")));
                break;
            case "history_request":
                outlet.Reply(SocketKind.Shell, request, history.Answer(request.Content));
                break;
            case "comm_info_request":
                outlet.Reply(SocketKind.Shell, request, widgets.Info(request.Content));
                break;
            case "comm_open":
                widgets.Open(request);
                break;
            case "comm_close":
                widgets.Close(request);
                break;
            case "comm_msg":
                await widgets.HandleAsync(request, session);
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
                outlet.Reply(socket, request, KernelInfo.Answer());
                break;
            case "interrupt_request":
                execute.Interrupt();
                widgets.Interrupt();
                outlet.Reply(socket, request, []);
                break;
            case "shutdown_request":
                outlet.Reply(socket, request, new JsonObject {
                    ["restart"] = JupyterMessage.FlagOf(request.Content, "restart", absent: false) });
                break;
        }
    }

    // A front-end that sent many cells at once doesn't want the rest run on a failure.
    private void DropWaiting()
    {
        var others = new List<JupyterMessage>();
        while (shell.Reader.TryRead(out var waiting))
        {
            if (waiting.Type != "execute_request")
            {
                others.Add(waiting);
                continue;
            }

            outlet.Status("busy", waiting);
            outlet.Reply(SocketKind.Shell, waiting, new JsonObject { ["status"] = "aborted", ["execution_count"] = 0 });
            outlet.Status("idle", waiting);
        }

        foreach (var other in others) shell.Writer.TryWrite(other);
    }
}
