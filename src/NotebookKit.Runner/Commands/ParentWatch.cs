using System.Diagnostics;
using System.Globalization;

namespace NotebookKit.Runner.Commands;

/// <summary>Cancels when the front-end's process has gone without saying so, that no kernel is left behind.</summary>
internal sealed class ParentWatch : IDisposable
{
    // Front-ends of the Jupyter project name their process in this variable.
    private const string ParentVariable = "JPY_PARENT_PID";
    private static readonly TimeSpan Interval = TimeSpan.FromSeconds(3);

    private readonly CancellationTokenSource _source;
    private readonly Timer? _timer;

    /// <summary>Starts watching.</summary>
    /// <param name="also">Something else that cancels.</param>
    public ParentWatch(CancellationToken also)
    {
        _source = CancellationTokenSource.CreateLinkedTokenSource(also);
        if (int.TryParse(Environment.GetEnvironmentVariable(ParentVariable), NumberStyles.None, CultureInfo.InvariantCulture,
            out var parent) && parent > 1)
            _timer = new Timer(_ => CancelWithout(parent), null, Interval, Interval);
    }

    /// <summary>Cancelled when it has gone.</summary>
    public CancellationToken Token => _source.Token;

    /// <inheritdoc />
    public void Dispose()
    {
        _timer?.Dispose();
        _source.Dispose();
    }

    private void CancelWithout(int parent)
    {
        try
        {
            using var process = Process.GetProcessById(parent);
        }
        catch (ArgumentException)
        {
            _source.Cancel();
        }
    }
}
