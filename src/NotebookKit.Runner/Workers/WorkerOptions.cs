using NotebookKit.Record.Givens;
using NotebookKit.Runner.Batch;

namespace NotebookKit.Runner.Workers;

/// <summary>How a worker is started.</summary>
/// <param name="WorkingDirectory">Folder that relative paths in cells start from.</param>
/// <param name="CellLimit">How long one cell may run; none for no limit.</param>
/// <param name="OutputLimitBytes">How much one cell may write [bytes], above 0.</param>
/// <param name="StopGrace">How long a cell that is asked to stop may take before its session is ended; none ends it at once.</param>
/// <param name="Live">Whether there is a front-end that takes controls.</param>
/// <param name="Batch">What becomes of dispersions; none just flies them.</param>
/// <param name="Givens">Values that stand in for the notebook's own givens; none leaves it its own.</param>
internal sealed record WorkerOptions(
    string WorkingDirectory, TimeSpan? CellLimit = null, long OutputLimitBytes = WorkerOptions.UsualOutputLimitBytes,
        TimeSpan? StopGrace = null, bool Live = false,
    BatchOptions? Batch = null, GivenOverrides? Givens = null)
{
    /// <summary>How much one cell may write unless told otherwise [bytes].</summary>
    public const long UsualOutputLimitBytes = 5_000_000;

    /// <summary>How long a worker may take to start.</summary>
    public static TimeSpan StartLimit { get; } = TimeSpan.FromSeconds(60);
}
