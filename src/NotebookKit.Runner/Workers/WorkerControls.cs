using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using NotebookKit.Interactive.Live;

namespace NotebookKit.Runner.Workers;

/// <summary>The controls that cells of this worker made.</summary>
/// <param name="send">Sends to the front.</param>
internal sealed class WorkerControls(Action<WorkerReply> send) : IFrontEndLink
{
    private readonly ConcurrentDictionary<string, Action<JsonObject>> _listeners = new(StringComparer.Ordinal);

    /// <inheritdoc />
    public void Open(string id, JsonObject state, Action<JsonObject>? changed)
    {
        if (changed is not null) _listeners[id] = changed;
        send(new ControlOpened(id, state));
    }

    /// <inheritdoc />
    public void Update(string id, JsonObject state) => send(new ControlUpdated(id, state));

    /// <summary>Tells whoever made a control that the reader moved it.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="state">Values that changed.</param>
    public void Move(string id, JsonObject state)
    {
        if (_listeners.TryGetValue(id, out var changed)) changed(state);
    }
}
