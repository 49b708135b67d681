using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Carries the controls of a notebook between its session and its front-ends.</summary>
/// <param name="outlet">Sends messages.</param>
internal sealed class WidgetHandler(KernelOutlet outlet)
{
    private readonly ConcurrentDictionary<string, JsonObject> _states = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, int> _waiting = new(StringComparer.Ordinal);
    private readonly Lock _door = new();
    private CancellationTokenSource? _running;
    private volatile WidgetDialect _dialect = new(IsOld: false);

    /// <summary>The request being worked on, to which what the session sends belongs.</summary>
    public JupyterMessage? Current { get; set; }

    /// <summary>Takes what the session says of its controls.</summary>
    /// <param name="reply">What it says.</param>
    public void Take(WorkerReply reply)
    {
        switch (reply)
        {
            case ControlOpened opened:
                _states[opened.Control] = opened.State;
                Publish("comm_open", new JsonObject
                {
                    ["comm_id"] = opened.Control, ["target_name"] = WidgetDialect.Target, ["data"] = _dialect.OpenData(opened.State),
                });
                break;
            case ControlUpdated updated when _states.TryGetValue(updated.Control, out var state):
                Merge(state, updated.State);
                Send(updated.Control, _dialect.UpdateData(state, updated.State));
                break;
        }
    }

    /// <summary>Notes that a front-end's message has arrived, before its turn comes.</summary>
    /// <param name="message">Message.</param>
    public void Arrived(JupyterMessage message)
    {
        if (message.Type == "comm_msg" && ChangedBy(message) is not null) _waiting.AddOrUpdate(CommOf(message), 1, (_, n) => n + 1);
    }

    /// <summary>Answers a front-end that opens a comm of its own.</summary>
    /// <param name="request">Its message.</param>
    public void Open(JupyterMessage request)
    {
        var comm = CommOf(request);
        if (JupyterMessage.TextOf(request.Content, "target_name") == WidgetDialect.OldVersionTarget)
        {
            _dialect = new WidgetDialect(IsOld: true);
            Send(comm, new JsonObject { ["version"] = WidgetDialect.OldVersion });
            return;
        }

        // The protocol's answer to a target that isn't known.
        Publish("comm_close", new JsonObject { ["comm_id"] = comm, ["data"] = new JsonObject() });
    }

    /// <summary>Handles a front-end's message to a control. Of several that wait for one control, the latest alone is computed.</summary>
    /// <param name="request">Its message.</param>
    /// <param name="session">Session that made the control.</param>
    public async Task HandleAsync(JupyterMessage request, KernelSession session)
    {
        var comm = CommOf(request);
        if (ChangedBy(request) is { } changed)
        {
            var later = _waiting.AddOrUpdate(comm, 0, (_, n) => n - 1);
            if (!_states.TryGetValue(comm, out var state)) return;
            changed = WidgetDialect.Understood(state, changed);
            Merge(state, changed);
            if (later <= 0) await TellAsync(request, session, changed);
        }
        else if (request.Content["data"] is JsonObject message && WidgetDialect.Sent(message) is { } sent)
        {
            if (_states.ContainsKey(comm)) await TellAsync(request, session, sent);
        }
        else if (request.Content["data"] is JsonObject data && JupyterMessage.TextOf(data, "method") == "request_state"
            && _states.TryGetValue(comm, out var state))
        {
            Send(comm, _dialect.UpdateData(state, _dialect.WithModules(state)));
        }
    }

    /// <summary>Interrupts what a moved control set off, if something runs.</summary>
    public void Interrupt()
    {
        lock (_door) _running?.Cancel();
    }

    /// <summary>Forgets a control that the front-end has closed.</summary>
    /// <param name="request">Its message.</param>
    public void Close(JupyterMessage request) => _states.TryRemove(CommOf(request), out _);

    /// <summary>All controls, as the answer to a comm-info request.</summary>
    /// <param name="request">Content of the request; it may name the one target that is asked for.</param>
    public JsonObject Info(JsonObject request)
    {
        var comms = new JsonObject();
        if (JupyterMessage.TextOf(request, "target_name") is not ("" or WidgetDialect.Target)) return new JsonObject { ["comms"] = comms };
        foreach (var id in _states.Keys) comms[id] = new JsonObject { ["target_name"] = WidgetDialect.Target };
        return new JsonObject { ["comms"] = comms };
    }

    /// <summary>Makes an output with a view ready for the front-end, and shows the view where the front-end wants to be told to.</summary>
    /// <param name="data">Media types of the output; changed in place.</param>
    public void Show(JsonObject data)
    {
        if (!_dialect.IsOld || data[WidgetDialect.View] is not JsonObject view) return;
        // This front-end shows the view beside the output: the computed form would stand there twice.
        data.Remove("text/html");
        Send(JupyterMessage.TextOf(view, "model_id"), new JsonObject { ["method"] = "display" });
    }

    /// <summary>Forgets the controls of a session that is gone.</summary>
    public void Forget()
    {
        foreach (var id in _states.Keys) Publish("comm_close", new JsonObject { ["comm_id"] = id, ["data"] = new JsonObject() });
        _states.Clear();
    }

    private async Task TellAsync(JupyterMessage request, KernelSession session, JsonObject told)
    {
        using var stop = new CancellationTokenSource();
        lock (_door) _running = stop;
        try
        {
            var outcome = await session.MoveAsync(CommOf(request), told, stop.Token);
            if (outcome.Error is { } error) outlet.Publish("error", request, OutputPublisher.ErrorContent(error));
            if (outcome.SessionLost) Forget();
        }
        finally
        {
            lock (_door) _running = null;
        }
    }

    private static string CommOf(JupyterMessage message) => JupyterMessage.TextOf(message.Content, "comm_id");

    private static JsonObject? ChangedBy(JupyterMessage message) => message.Content["data"] is JsonObject data
        ? WidgetDialect.Changed(data) : null;

    private static void Merge(JsonObject state, JsonObject changed)
    {
        foreach (var (name, value) in changed) state[name] = value?.DeepClone();
    }

    private void Send(string comm, JsonObject data) => Publish("comm_msg", new JsonObject { ["comm_id"] = comm, ["data"] = data });

    private void Publish(string type, JsonObject content) => outlet.Publish(type, Current, content, WidgetMetadata(type));

    private static JsonObject WidgetMetadata(string type) => type == "comm_open" ? new JsonObject { ["version"] = "2.1.0" } : [];
}
