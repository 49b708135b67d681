namespace NotebookKit.Numerics;

/// <summary>
/// Lets whoever runs a long computation see how far it is, without every verb being handed a listener: it travels with the flow of the call, as a
/// request to stop does.
/// </summary>
public static class WorkProgress
{
    private static readonly AsyncLocal<IProgress<WorkDone>?> Listener = new();

    /// <summary>Calls of the current flow, from here on, tell this listener.</summary>
    /// <param name="listener">Told now and then, from any thread; none tells nobody.</param>
    public static void Listen(IProgress<WorkDone>? listener) => Listener.Value = listener;

    /// <summary>Tells whoever listens.</summary>
    /// <param name="done">How far the computation is.</param>
    public static void Tell(WorkDone done) => Listener.Value?.Report(done);
}
