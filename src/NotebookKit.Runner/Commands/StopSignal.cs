using System.Runtime.InteropServices;

namespace NotebookKit.Runner.Commands;

/// <summary>Turns Ctrl-C, and a request to end the process, into a cancellation, so that workers end and no half file stays.</summary>
internal sealed class StopSignal : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly IReadOnlyList<PosixSignalRegistration> _registrations;

    /// <summary>Starts listening.</summary>
    /// <param name="endsOnInterrupt">Whether Ctrl-C cancels, or is not heard at all.</param>
    public StopSignal(bool endsOnInterrupt = true) => _registrations =
    [
        PosixSignalRegistration.Create(PosixSignal.SIGINT, endsOnInterrupt ? Stop : context => context.Cancel = true),
        PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop),
    ];

    /// <summary>Cancelled by the first signal.</summary>
    public CancellationToken Token => _source.Token;

    /// <inheritdoc />
    public void Dispose()
    {
        foreach (var registration in _registrations) registration.Dispose();
        _source.Dispose();
    }

    // A second signal finds it cancelled already and is left to do what signals do.
    private void Stop(PosixSignalContext context)
    {
        if (_source.IsCancellationRequested) return;
        context.Cancel = true;
        _source.Cancel();
    }
}
