namespace NotebookKit.Runner.Engine;

/// <summary>Counts what one cell writes and shuts the tap when it is too much.</summary>
/// <param name="limitBytes">How much one cell may write [bytes], above 0.</param>
internal sealed class OutputMeter(long limitBytes)
{
    private readonly TaskCompletionSource _exceeded = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private long _written;

    /// <summary>Done as soon as the limit is passed.</summary>
    public Task Exceeded => _exceeded.Task;

    /// <summary>Whether an output of this size may still pass.</summary>
    /// <param name="bytes">Size of the output [bytes], 0 or more.</param>
    public bool Allows(long bytes)
    {
        if (Interlocked.Add(ref _written, bytes) <= limitBytes) return true;
        _exceeded.TrySetResult();
        return false;
    }
}
