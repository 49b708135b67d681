using System.Text;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Workers;

/// <summary>The worker's side: runs cells in this process as the front asks, until the front goes away.</summary>
internal sealed class WorkerHost : IDisposable
{
    private readonly TextReader requests;
    private readonly TextWriter replies;
    private readonly Lock writing = new();
    private CancellationTokenSource running = new();

    private WorkerHost(TextReader requests, TextWriter replies)
    {
        this.requests = requests;
        this.replies = replies;
    }

    /// <summary>Serves the front until it closes the input.</summary>
    /// <param name="outputLimitBytes">How much one cell may write [bytes], above 0.</param>
    /// <returns>Exit code.</returns>
    public static async Task<int> ServeAsync(long outputLimitBytes)
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        using var input = new StreamReader(Console.OpenStandardInput(), utf8);
        await using var output = new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = true };

        // Standard output belongs to the replies. What cells print outside the kernel's hearing goes to standard error.
        Console.SetOut(Console.Error);
        Console.SetIn(TextReader.Null);
        using var host = new WorkerHost(input, output);
        return await host.ServeAsync(() => CSharpEngine.StartAsync(outputLimitBytes));
    }

    /// <inheritdoc />
    public void Dispose() => running.Dispose();

    private async Task<int> ServeAsync(Func<Task<CSharpEngine>> start)
    {
        CSharpEngine engine;
        try
        {
            engine = await start();
        }
#pragma warning disable CA1031 // whatever stops the engine from starting has to reach the front as a sentence
        catch (Exception e)
#pragma warning restore CA1031
        {
            Send(new ReadyReply(e.Message));
            return 1;
        }

        Send(new ReadyReply(null));
        var work = Task.CompletedTask;
        while (await requests.ReadLineAsync() is { } line)
        {
            switch (WorkerJson.Read<WorkerRequest>(line))
            {
                case RunRequest request:
                    await work;
                    work = RunAsync(engine, request);
                    break;
                case InterruptRequest:
                    await running.CancelAsync();
                    break;
            }
        }

        // Not disposed: the front has gone, and a cell that never ends would hold the process.
        return 0;
    }

    private async Task RunAsync(CSharpEngine engine, RunRequest request)
    {
        running.Dispose();
        running = new CancellationTokenSource();
        var outcome = await engine.RunAsync(request.Code, output => Send(new OutputReply(request.Id, output)), running.Token);
        Send(new DoneReply(request.Id, outcome));
    }

    private void Send(WorkerReply reply)
    {
        var line = WorkerJson.Write(reply);
        lock (writing) replies.WriteLine(line);
    }
}
