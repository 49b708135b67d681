namespace NotebookKit.Runner.Engine;

/// <summary>
/// Where the code of a cell goes on after an await. A cell that was stopped gets a moment to clear up, then it goes on no more: a loop that
/// awaits without looking whether it is asked to stop would otherwise run on unseen.
/// </summary>
/// <param name="stopped">Cancelled when the cell is stopped.</param>
internal sealed class CellContext(CancellationToken stopped) : SynchronizationContext
{
    private const long ClearingUpMilliseconds = 1000;
    private long _end;

    /// <inheritdoc />
    public override SynchronizationContext CreateCopy() => this;

    /// <inheritdoc />
    public override void Post(SendOrPostCallback d, object? state)
    {
        if (IsOver()) return;
        ThreadPool.QueueUserWorkItem(_ =>
        {
            SetSynchronizationContext(this);
            try
            {
                d(state);
            }
            finally
            {
                SetSynchronizationContext(null);
            }
        });
    }

    private bool IsOver()
    {
        if (!stopped.IsCancellationRequested) return false;
        var now = Environment.TickCount64;
        var known = Interlocked.CompareExchange(ref _end, now + ClearingUpMilliseconds, 0);
        return known != 0 && now > known;
    }
}
