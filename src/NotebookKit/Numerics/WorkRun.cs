using NotebookKit.Numerics.Disks;

namespace NotebookKit.Numerics;

/// <summary>
/// What whoever runs a long computation wants of it: to be able to stop it, and to see how far it is. Both travel with the flow of the
/// call, also into parallel loops, so that no verb has to pass them on. Neither changes an answer: a computation that ends gives the same
/// numbers in any run.
/// </summary>
/// <remarks>A long loop takes <see cref="Current"/> once, before it begins, and looks at it once a pass.</remarks>
public sealed class WorkRun : IDisposable
{
    private static readonly AsyncLocal<WorkRun?> Innermost = new();
    private static readonly WorkRun Nobody = new(null, null, null, default);

    private readonly WorkRun? _outer;
    private readonly IProgress<WorkDone>? _listener;
    private readonly Action? _looked;
    private readonly CancellationTokenSource? _either;

    private WorkRun(WorkRun? outer, Action? looked, IProgress<WorkDone>? listener, CancellationToken stop, Disk? disk = null)
    {
        Disk = disk ?? outer?.Disk ?? Disk.Machine;
        _outer = outer;
        _listener = listener ?? outer?._listener;
        _looked = looked ?? outer?._looked;
        if (outer is null || !outer.Stop.CanBeCanceled || outer.Stop == stop) Stop = stop;
        else if (!stop.CanBeCanceled) Stop = outer.Stop;
        else Stop = (_either = CancellationTokenSource.CreateLinkedTokenSource(outer.Stop, stop)).Token;
    }

    /// <summary>The innermost run that the current flow is in; one that never stops and tells nobody where there is none.</summary>
    public static WorkRun Current => Innermost.Value ?? Nobody;

    /// <summary>Cancelled when the computation is to stop.</summary>
    public CancellationToken Stop { get; }

    /// <summary>What the run's files are written with.</summary>
    internal Disk Disk { get; }

    /// <summary>
    /// Begins a run; it ends when it is disposed of, and the one around it goes on. Inside another, both can stop what is computed, and the
    /// inner one is told how far that is.
    /// </summary>
    /// <param name="stop">Cancelled by whoever wants the computation to stop.</param>
    /// <param name="progress">Told now and then, from any thread; none leaves that to the run around it.</param>
    public static WorkRun Begin(CancellationToken stop, IProgress<WorkDone>? progress = null)
        => Enter(new(Innermost.Value, null, progress, stop));

    /// <summary>Stops the computation if it was asked to.</summary>
    /// <exception cref="OperationCanceledException">It was.</exception>
    public void ThrowIfStopped()
    {
        _looked?.Invoke();
        Stop.ThrowIfCancellationRequested();
    }

    /// <summary>Tells whoever listens.</summary>
    /// <param name="done">How far the computation is.</param>
    public void Tell(WorkDone done) => _listener?.Report(done);

    /// <summary>Options of a parallel loop that stops with this run.</summary>
    /// <param name="threads">Most threads to use, 1 or more; as many as the machine has where none is given.</param>
    public ParallelOptions Parallel(int? threads = null) => new() { CancellationToken = Stop, MaxDegreeOfParallelism = threads ?? -1 };

    /// <inheritdoc/>
    public void Dispose()
    {
        if (ReferenceEquals(Innermost.Value, this)) Innermost.Value = _outer;
        _either?.Dispose();
    }

    /// <summary>Begins a run that calls back at every look, from any thread: that shows where a computation looks.</summary>
    internal static WorkRun Watch(Action looked, CancellationToken stop = default) => Enter(new(Innermost.Value, looked, null, stop));

    /// <summary>Begins a run whose files are written with another disk: that shows what is left where one fails.</summary>
    internal static WorkRun WriteWith(Disk disk) => Enter(new(Innermost.Value, null, null, default, disk));

    private static WorkRun Enter(WorkRun run)
    {
        Innermost.Value = run;
        return run;
    }
}
