namespace NotebookKit.Numerics;

/// <summary>
/// Lets whoever runs a long computation ask it to stop, without every verb taking a token: the wish travels with the flow of the call, also into
/// parallel loops. Long loops look at it once a pass.
/// </summary>
public static class StopRequest
{
    private static readonly AsyncLocal<CancellationToken> Token = new();

    /// <summary>Calls of the current flow, from here on, stop when this token is cancelled.</summary>
    /// <param name="token">Cancelled by whoever wants them to stop.</param>
    public static void Listen(CancellationToken token) => Token.Value = token;

    /// <summary>Stops the computation if it was asked to.</summary>
    /// <exception cref="OperationCanceledException">It was.</exception>
    public static void ThrowIfAsked() => Token.Value.ThrowIfCancellationRequested();
}
