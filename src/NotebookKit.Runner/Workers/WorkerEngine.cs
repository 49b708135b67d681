using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Workers;

/// <summary>
/// A session in a process of its own: whatever a cell does, this side goes on. A cell over its time or output limit, or one that ends the
/// process, ends the session, and the outcome says so.
/// </summary>
internal sealed class WorkerEngine : INotebookEngine, ILanguageHelp
{
    private readonly Process _process;
    private readonly string _mark;
    private readonly WorkerOptions _options;
    private readonly ErrorTail _errors = new();
    private readonly Task _errorsRead;
    private readonly Task _repliesRead;
    private readonly TaskCompletionSource<ReadyReply> _ready = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ConcurrentDictionary<int, Open> _open = new();
    private readonly Lock _sending = new();
    private int _requests;

    private WorkerEngine(Process process, string mark, WorkerOptions options)
    {
        this._process = process;
        this._mark = mark;
        this._options = options;
        _errorsRead = _errors.ReadAsync(process.StandardError);
        _repliesRead = ReadRepliesAsync();
    }

    private sealed record Open(int Id, Action<CellOutput>? Output, TaskCompletionSource<WorkerReply?> Answer);

    /// <summary>Asks the reader to type something for a running cell; without it nobody can be asked.</summary>
    public Func<InputRequest, Task<string?>>? Asking { get; set; }

    /// <summary>Told of controls that cells make and change, in order; without it they go nowhere.</summary>
    public Action<WorkerReply>? Controls { get; set; }

    /// <summary>Told of what is printed when the cell has ended; without it that goes nowhere.</summary>
    public Action<CellOutput>? Late { get; set; }

    /// <summary>Starts a worker and waits until its session is up.</summary>
    /// <param name="options">How it is started.</param>
    /// <param name="cancellation">Gives up and ends the worker.</param>
    /// <exception cref="EngineStartException">The session couldn't start.</exception>
    public static async Task<WorkerEngine> StartAsync(WorkerOptions options, CancellationToken cancellation)
    {
        var start = WorkerProgram.StartInfo(options);
        var process = Process.Start(start) ?? throw new EngineStartException("The worker process could not be started.");
        var engine = new WorkerEngine(process, start.Environment[ProcessFamily.Variable]!, options);
        try
        {
            var answer = await engine._ready.Task.WaitAsync(WorkerOptions.StartLimit, cancellation);
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
        if (_repliesRead.IsCompleted) return Crashed("The session's process had ended before this cell began");
        var request = Begin(output);
        try
        {
            Send(new RunRequest(request.Id, code));
            var answer = _options.CellLimit is { } limit
                ? await request.Answer.Task.WaitAsync(limit, cancellation)
                : await request.Answer.Task.WaitAsync(cancellation);
            return await EndedAsync(answer);
        }
        catch (TimeoutException)
        {
            await EndAsync();
            return new(CellStatus.TimedOut, CellError.Plain("TimeLimit", string.Create(
                CultureInfo.InvariantCulture,
                $"The cell was still running after {_options.CellLimit!.Value.TotalSeconds:0.#} s and was stopped.")));
        }
        catch (OperationCanceledException) when (_options.StopGrace is { } grace)
        {
            return await StopAsync(request, grace);
        }
        finally
        {
            _open.TryRemove(request.Id, out _);
        }
    }

    /// <inheritdoc />
    public async Task<CompletionList> CompleteAsync(string code, int position, CancellationToken cancellation)
    {
        var answer = await AskAsync(id => new CompleteRequest(id, code, position), cancellation);
        return (answer as CompleteReply)?.List ?? new CompletionList(position, position, []);
    }

    /// <summary>Tells the worker that the reader moved a control, and waits until it has answered.</summary>
    /// <param name="control">Id of the control.</param>
    /// <param name="state">Values that changed.</param>
    /// <param name="cancellation">Interrupts what the control set off.</param>
    public async Task<CellOutcome> MoveAsync(string control, JsonObject state, CancellationToken cancellation)
    {
        var request = Begin(null);
        try
        {
            Send(new ControlMoved(request.Id, control, state));
            return await EndedAsync(await request.Answer.Task.WaitAsync(cancellation));
        }
        catch (OperationCanceledException)
        {
            return await StopAsync(request, _options.StopGrace ?? TimeSpan.Zero);
        }
        finally
        {
            _open.TryRemove(request.Id, out _);
        }
    }

    /// <inheritdoc />
    public async Task<Description?> DescribeAsync(string code, int position, CancellationToken cancellation)
    {
        var answer = await AskAsync(id => new DescribeRequest(id, code, position), cancellation);
        return (answer as DescribeReply)?.Description;
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await EndAsync();
        _process.Dispose();
    }

    /// <summary>Begins a fresh session in the same process, where the one before left nothing behind.</summary>
    /// <param name="folder">Folder that relative paths in cells start from.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <returns>Why there is none, and the worker is good for nothing more; none where there is one.</returns>
    public async Task<string?> RenewAsync(string folder, CancellationToken cancellation)
    {
        var answer = await AskAsync(id => new RenewRequest(id, folder), cancellation).WaitAsync(WorkerOptions.StartLimit, cancellation);
        return answer is RenewReply reply ? reply.Why : "it has ended";
    }

    private Open Begin(Action<CellOutput>? output)
    {
        var request = new Open(Interlocked.Increment(ref _requests), output, new(TaskCreationOptions.RunContinuationsAsynchronously));
        _open[request.Id] = request;
        // The worker may have died before: then nobody else would answer.
        if (_repliesRead.IsCompleted) request.Answer.TrySetResult(null);
        return request;
    }

    private async Task<WorkerReply?> AskAsync(Func<int, WorkerRequest> make, CancellationToken cancellation)
    {
        var request = Begin(null);
        try
        {
            Send(make(request.Id));
            return await request.Answer.Task.WaitAsync(cancellation);
        }
        finally
        {
            _open.TryRemove(request.Id, out _);
        }
    }

    private async Task<CellOutcome> StopAsync(Open request, TimeSpan grace)
    {
        Send(new InterruptRequest(request.Id));
        try
        {
            return await EndedAsync(await request.Answer.Task.WaitAsync(grace));
        }
        catch (TimeoutException)
        {
            await EndAsync();
            return new(CellStatus.Abandoned, CellError.Plain("Interrupted", "The cell did not stop when asked."));
        }
    }

    private async Task<CellOutcome> EndedAsync(WorkerReply? answer)
    {
        if (answer is not DoneReply done) return Crashed("The cell ended the whole process");
        if (done.Outcome.SessionLost) await EndAsync();
        return done.Outcome;
    }

    private void Send(WorkerRequest request)
    {
        try
        {
            lock (_sending)
            {
                _process.StandardInput.WriteLine(WorkerJson.Write(request));
                _process.StandardInput.Flush();
            }
        }
        catch (IOException)
        {
            // It has died; the end of its replies says so to whoever waits.
        }
    }

    private async Task ReadRepliesAsync()
    {
        while (await _process.StandardOutput.ReadLineAsync() is { } line)
        {
            switch (WorkerJson.Read<WorkerReply>(line))
            {
                case ReadyReply reply:
                    _ready.TrySetResult(reply);
                    break;
                case OutputReply reply when _open.TryGetValue(reply.Id, out var request):
                    request.Output?.Invoke(reply.Output);
                    break;
                case OutputReply reply:
                    Late?.Invoke(reply.Output);
                    break;
                case { } reply and (ControlOpened or ControlUpdated):
                    Controls?.Invoke(reply);
                    break;
                case InputWanted reply:
                    _ = AnswerAsync(reply);
                    break;
                case { } reply when _open.TryGetValue(reply.Id, out var request):
                    request.Answer.TrySetResult(reply);
                    break;
            }
        }

        await _process.WaitForExitAsync();
        await Settled(_errorsRead);
        _ready.TrySetException(new EngineStartException($"The worker process ended while starting. {_errors.Summary}".Trim()));
        foreach (var request in _open.Values) request.Answer.TrySetResult(null);
    }

    private async Task AnswerAsync(InputWanted wanted) =>
        Send(new InputGiven(wanted.Id, Asking is null ? null : await Asking(wanted.Input)));

    private CellOutcome Crashed(string what)
    {
        var code = _process.HasExited ? _process.ExitCode : -1;
        var said = _errors.Summary is { Length: > 0 } text ? $": {text}" : ".";
        return new(CellStatus.Crashed, CellError.Plain("ProcessEnded", string.Create(
            CultureInfo.InvariantCulture, $"{what} (exit code {code}){said}")));
    }

    private async Task EndAsync()
    {
        if (!_process.HasExited)
        {
            try
            {
                _process.Kill(entireProcessTree: true);
            }
            catch (InvalidOperationException)
            {
                // It ended between the question and the kill.
            }
        }

        ProcessFamily.End(_process.Id, _mark);
        await Settled(_repliesRead);
    }

    // A process that a cell started may hold the streams open after the worker has gone: not worth waiting for.
    private static async Task Settled(Task stream) => await Task.WhenAny(stream, Task.Delay(TimeSpan.FromSeconds(2)));
}
