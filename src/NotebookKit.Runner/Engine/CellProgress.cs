using System.Diagnostics;
using NotebookKit.Numerics;

namespace NotebookKit.Runner.Engine;

/// <summary>Shows how far the long computations of one cell are: not before a reader starts to wonder, and not more often than an eye
/// follows.</summary>
/// <param name="output">Told of what is shown.</param>
internal sealed class CellProgress(Action<CellOutput> output) : IProgress<WorkDone>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(0.5);
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(0.25);

    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly Lock door = new();
    private TimeSpan? shown;

    /// <inheritdoc />
    public void Report(WorkDone value)
    {
        lock (door)
        {
            var now = clock.Elapsed;
            var ends = shown is not null && value.Done >= value.Of;
            if (!ends && (now < Patience || now - shown < Beat)) return;
            shown = now;
            output(new ProgressOutput(value.ToString()));
        }
    }
}
