using System.Diagnostics;
using Microsoft.DotNet.Interactive;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Live;

/// <summary>
/// A bar below the cell that grows in place while a long verb works: <c>curlew.Disperse(site, spread, flights: 10_000, seed: 7, progress:
/// ProgressBar.Show("Flights", 10_000))</c>.
/// Outside a cell it shows nothing.
/// </summary>
public sealed class ProgressBar : IProgress<int>
{
    // Faster than that nobody sees, and every step is a message.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    private readonly Lock _door = new();
    private readonly Action<ProgressState>? _update;
    private readonly Stopwatch _since = Stopwatch.StartNew();
    private ProgressState _state;

    private ProgressBar(ProgressState state)
    {
        this._state = state;
        if (KernelInvocationContext.Current is not { } context) return;
        var shown = KernelInvocationContextExtensions.Display(context, state);
        _update = shown.Update;
    }

    /// <summary>Shows an empty bar.</summary>
    /// <param name="what">What is counted: "Flights".</param>
    /// <param name="of">How many there are; above 0.</param>
    /// <exception cref="OutOfRangeException">There is nothing to count.</exception>
    public static ProgressBar Show(string what, int of)
    {
        ArgumentNullException.ThrowIfNull(what);
        new ValidRange<int>(1, int.MaxValue).Check(of, $"number of {what.ToLowerInvariant()}", "A bar needs something to count.");
        return new(new ProgressState(what, 0, of));
    }

    /// <summary>Lets the bar grow; may be called from any thread, and a smaller number than before changes nothing.</summary>
    /// <param name="value">How many are done.</param>
    public void Report(int value)
    {
        lock (_door)
        {
            if (value <= _state.Done) return;
            var done = Math.Min(value, _state.Of);
            if (done < _state.Of && _since.Elapsed < Pause) return;
            _state = _state with { Done = done };
            _since.Restart();
            _update?.Invoke(_state);
        }
    }
}

/// <summary>How far something is.</summary>
/// <param name="What">What is counted.</param>
/// <param name="Done">How many are done.</param>
/// <param name="Of">How many there are.</param>
internal sealed record ProgressState(string What, int Done, int Of);
