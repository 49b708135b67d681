using System.Diagnostics;
using System.Globalization;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Workers;

/// <summary>
/// A session in a process of its own: whatever a cell does, this side goes on. A cell over its time or output limit, or one that ends the
/// process, ends the session, and the outcome says so.
/// </summary>
internal sealed class WorkerEngine : INotebookEngine
{
    private readonly Process process;
    private readonly WorkerOptions options;
    private readonly ErrorTail errors = new();
    private readonly Task errorsRead;
    private readonly Task repliesRead;
    private readonly TaskCompletionSource<ReadyReply> ready = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private Run? current;
    private int requests;

    private WorkerEngine(Process process, WorkerOptions options)
    {
        this.process = process;
        this.options = options;
        errorsRead = errors.ReadAsync(process.StandardError);
        repliesRead = ReadRepliesAsync();
    }

    private sealed record Run(int Id, Action<CellOutput> Output, TaskCompletionSource<CellOutcome> Done);

    /// <summary>Starts a worker and waits until its session is up.</summary>
    /// <param name="options">How it is started.</param>
    /// <param name="cancellation">Gives up and ends the worker.</param>
    /// <exception cref="EngineStartException">The session couldn't start.</exception>
    public static async Task<WorkerEngine> StartAsync(WorkerOptions options, CancellationToken cancellation)
    {
        var process = Process.Start(WorkerProgram.StartInfo(options)) ?? throw new EngineStartException("The worker process could not be started.");
        var engine = new WorkerEngine(process, options);
        try
        {
            var answer = await engine.ready.Task.WaitAsync(WorkerOptions.StartLimit, cancellation);
            if (answer.Problem is { } problem) throw new EngineStartException(problem);
            return engine;
        }
        catch (Exception e)
        {
            await engine.DisposeAsync();
            if (e is TimeoutException) throw new EngineStartException("The worker process did not answer.");
            throw;
        }
    }

    /// <inheritdoc />
    public async Task<CellOutcome> RunAsync(string code, Action<CellOutput> output, CancellationToken cancellation)
    {
        var run = new Run(Interlocked.Increment(ref requests), output, new(TaskCreationOptions.RunContinuationsAsynchronously));
        current = run;
        if (!await SendAsync(new RunRequest(run.Id, code))) return Crashed();
        try
        {
            return options.CellLimit is { } limit
                ? await run.Done.Task.WaitAsync(limit, cancellation)
                : await run.Done.Task.WaitAsync(cancellation);
        }
        catch (TimeoutException)
        {
            await EndAsync();
            return new(CellStatus.TimedOut, CellError.Plain("TimeLimit", string.Create(
                CultureInfo.InvariantCulture,
                $"The cell was still running after {options.CellLimit!.Value.TotalSeconds:0.#} s and was stopped.")));
        }
        finally
        {
            current = null;
        }
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await EndAsync();
        process.Dispose();
    }

    private async Task<bool> SendAsync(WorkerRequest request)
    {
        try
        {
            await process.StandardInput.WriteLineAsync(WorkerJson.Write(request));
            await process.StandardInput.FlushAsync();
            return true;
        }
        catch (IOException)
        {
            return false;
        }
    }

    private async Task ReadRepliesAsync()
    {
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            switch (WorkerJson.Read<WorkerReply>(line))
            {
                case ReadyReply reply:
                    ready.TrySetResult(reply);
                    break;
                case OutputReply reply when current is { } run && run.Id == reply.Id:
                    run.Output(reply.Output);
                    break;
                case DoneReply reply when current is { } run && run.Id == reply.Id:
                    run.Done.TrySetResult(reply.Outcome);
                    break;
            }
        }

        await process.WaitForExitAsync();
        await Settled(errorsRead);
        ready.TrySetException(new EngineStartException($"The worker process ended while starting. {errors.Summary}".Trim()));
        current?.Done.TrySetResult(Crashed());
    }

    private CellOutcome Crashed()
    {
        var code = process.HasExited ? process.ExitCode : -1;
        var said = errors.Summary is { Length: > 0 } text ? $": {text}" : ".";
        return new(CellStatus.Crashed, CellError.Plain("ProcessEnded", string.Create(
            CultureInfo.InvariantCulture, $"The cell ended the whole process (exit code {code}){said}")));
    }

    private async Task EndAsync()
    {
        if (!process.HasExited)
        {
            try
            {
                process.Kill(entireProcessTree: true);
            }
            catch (InvalidOperationException)
            {
                // It ended between the question and the kill.
            }
        }

        await Settled(repliesRead);
    }

    // A process that a cell started may hold the streams open after the worker has gone: not worth waiting for.
    private static async Task Settled(Task stream) => await Task.WhenAny(stream, Task.Delay(TimeSpan.FromSeconds(2)));
}
