using NotebookKit.Runner.Jupyter;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>A kernel's front in this process, its worker beside it, and a client that speaks to it over real sockets.</summary>
internal sealed class KernelUnderTest : KernelClient, IAsyncDisposable
{
    private readonly CancellationTokenSource stop = new();
    private readonly KernelServer server;

    private KernelUnderTest(ConnectionFile connection)
        : base(connection)
    {
        server = new KernelServer(connection, Path.GetTempPath());
        Serving = server.ServeAsync(stop.Token);
    }

    public Task Serving { get; }

    public static KernelUnderTest Start()
    {
        var kernel = Listening();
        kernel.WaitUntilHeard();
        return kernel;
    }

    // A port that was free may be another program's a moment later.
    private static KernelUnderTest Listening()
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                return new KernelUnderTest(NewConnection());
            }
            catch (ConnectionException) when (tries < 5)
            {
            }
        }
    }

    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        await Task.WhenAny(Serving, Task.Delay(Patience.Limit));
        await server.DisposeAsync();
        Dispose();
        stop.Dispose();
    }
}
