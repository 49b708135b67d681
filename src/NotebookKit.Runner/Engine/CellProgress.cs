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

    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly Lock _door = new();
    private TimeSpan? _shown;

    /// <inheritdoc />
    public void Report(WorkDone value)
    {
        lock (_door)
        {
            var now = _clock.Elapsed;
            var ends = _shown is not null && value.Done >= value.Of;
            if (!ends && (now < Patience || now - _shown < Beat)) return;
            _shown = now;
            output(new ProgressOutput(value.ToString()));
        }
    }
}
