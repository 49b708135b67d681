using System.Text;
using System.Threading.Channels;
using Microsoft.DotNet.Interactive.Formatting;
using NotebookKit.Interactive;
using NotebookKit.Numerics;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Workers;

/// <summary>The worker's side: does in this process what the front asks, one thing after another, until the front goes away.</summary>
internal sealed class WorkerHost
{
    // A task that a cell forgot may print for ever.
    private const long MostLateBytes = 1_000_000;

    // What cells were compiled to is never given back.
    private const long MostRenewedBytes = 1_000_000_000;

    private readonly TextReader _requests;
    private readonly TextWriter _replies;
    private readonly Lock _writing = new();
    private readonly Channel<WorkerRequest> _work = Channel.CreateUnbounded<WorkerRequest>();
    private readonly WorkerControls _controls;
    private BetweenCells? _console;
    private CSharpEngine? _engine;
    private volatile Running? _running;
    private volatile int _stopped;
    private volatile int _latest;
    private volatile OutputMeter _late = new(MostLateBytes);

    private WorkerHost(TextReader requests, TextWriter replies)
    {
        this._requests = requests;
        this._replies = replies;
        _controls = new WorkerControls(Send);
    }

    private sealed record Running(int Id, CancellationTokenSource Stop)
    {
        public TaskCompletionSource<string?>? Input { get; set; }
    }

    /// <summary>Serves the front until it closes the input.</summary>
    /// <param name="outputLimitBytes">How much one cell may write [bytes], above 0.</param>
    /// <param name="live">Whether the front has a front-end that takes controls.</param>
    /// <param name="session">What the cells are handed.</param>
    /// <returns>Exit code.</returns>
    public static async Task<int> ServeAsync(long outputLimitBytes, bool live, Session session)
    {
        ProcessFamily.Lead();
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        using var input = new StreamReader(Console.OpenStandardInput(), utf8);
        await using var output = new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = true };
        var host = new WorkerHost(input, output);

        // Standard output belongs to the replies. What cells print outside the kernel's hearing goes to standard error.
        host._console = new BetweenCells(live ? new LateConsole(host.ShowLate) : Console.Error);
        Console.SetIn(new AskedConsole(request => host.AskAsync(request).GetAwaiter().GetResult()));
        return await host.ServeAsync(() => CSharpEngine.StartAsync(outputLimitBytes, host.AskAsync, live ? host._controls : null, session));
    }

    private async Task<int> ServeAsync(Func<Task<CSharpEngine>> start)
    {
        new Thread(Read) { IsBackground = true, Name = "requests" }.Start();
        return await Task.Run(() => WorkAsync(start));
    }

    // On a thread of its own: cells may keep all others busy, and no cell, thread or program of theirs may stay once the front has gone.
    private void Read()
    {
        try
        {
            ReadRequests();
        }
        catch (IOException)
        {
            // As good as closed.
        }

        ProcessFamily.EndOwn();
    }

    private void ReadRequests()
    {
        while (_requests.ReadLine() is { } line)
        {
            var current = _running;
            switch (WorkerJson.Read<WorkerRequest>(line))
            {
                case InterruptRequest request:
                    _stopped = request.Id;
                    if (current?.Id == request.Id) Stop(current);
                    break;
                case InputGiven given when current?.Id == given.Id:
                    current.Input?.TrySetResult(given.Text);
                    break;
                case InputGiven or null:
                    break;
                case { } request:
                    _work.Writer.TryWrite(request);
                    break;
            }
        }
    }

    // On a thread of its own: the cell may keep all others busy, and what it has registered may keep this one.
    private static void Stop(Running cell) => new Thread(() =>
    {
        try
        {
            cell.Stop.Cancel();
        }
        catch (Exception e) when (e is ObjectDisposedException or AggregateException)
        {
            // It ended by itself at this moment, or what it had registered failed.
        }
    }) { IsBackground = true, Name = "stop" }.Start();

    private async Task<int> WorkAsync(Func<Task<CSharpEngine>> start)
    {
        try
        {
            _engine = await start();
        }
#pragma warning disable CA1031 // whatever stops the engine from starting has to reach the front as a sentence
        catch (Exception e)
#pragma warning restore CA1031
        {
            Send(new ReadyReply(e.Message));
            return 1;
        }

        Send(new ReadyReply(null));
        await foreach (var request in _work.Reader.ReadAllAsync())
        {
            WorkerReply? reply = request switch
            {
                RunRequest run => await RunAsync(_engine, run),
                CompleteRequest place => new CompleteReply(place.Id,
                    await _engine.CompleteAsync(place.Code, place.Position, CancellationToken.None)),
                ControlMoved moved => Move(moved),
                RenewRequest renew => await RenewAsync(renew, start),
                DescribeRequest place => new DescribeReply(place.Id,
                    await _engine.DescribeAsync(place.Code, place.Position, CancellationToken.None)),
                _ => null,
            };
            if (reply is not null) Send(reply);
        }

        return 0;
    }

    private async Task<DoneReply> RunAsync(CSharpEngine engine, RunRequest request)
    {
        using var stop = new CancellationTokenSource();
        _running = new Running(request.Id, stop);
        _latest = request.Id;
        _late = new OutputMeter(MostLateBytes);
        // It may have been asked to stop before its turn came.
        if (_stopped == request.Id) await stop.CancelAsync();
        _console?.End();
        var outcome = await engine.RunAsync(request.Code, output => Send(new OutputReply(request.Id, output)), stop.Token);
        _console?.Begin();
        _running = null;
        return new DoneReply(request.Id, outcome);
    }

    // Only a session whose cells can't have left anything is followed by another one here.
    private async Task<RenewReply> RenewAsync(RenewRequest request, Func<Task<CSharpEngine>> start)
    {
        var traces = CellTraces.Found();
        if (traces.Count > 0) return new(request.Id, string.Join(", ", traces));
        if (Environment.WorkingSet > MostRenewedBytes) return new(request.Id, "memory");
        try
        {
            await _engine!.DisposeAsync();
            Formatter.ResetToDefault();
            Environment.CurrentDirectory = request.Folder;
            _engine = await start();
            return new(request.Id, null);
        }
#pragma warning disable CA1031 // whatever it is, the front starts another worker instead
        catch (Exception e)
#pragma warning restore CA1031
        {
            return new(request.Id, e.Message);
        }
    }

    private DoneReply Move(ControlMoved moved)
    {
        using var stop = new CancellationTokenSource();
        _running = new Running(moved.Id, stop);
        if (_stopped == moved.Id) stop.Cancel();
        try
        {
            using var run = WorkRun.Begin(stop.Token);
            _controls.Move(moved.Control, moved.State);
            return new DoneReply(moved.Id, CellOutcome.Success);
        }
#pragma warning disable CA1031 // what a model throws while the reader drags is told to the front like a cell's error
        catch (Exception e)
#pragma warning restore CA1031
        {
            return new DoneReply(moved.Id, new CellOutcome(CellStatus.Failed, CellErrorReader.FromException(e, "")));
        }
        finally
        {
            _running = null;
        }
    }

    private async Task<string?> AskAsync(InputRequest input)
    {
        if (_running is not { } current) return null;
        current.Input = new(TaskCreationOptions.RunContinuationsAsynchronously);
        Send(new InputWanted(current.Id, input));
        return await current.Input.Task.WaitAsync(current.Stop.Token);
    }

    // Whose task it was can't be told any more: it stands with the cell that ran last.
    private void ShowLate(string text)
    {
        if (_latest > 0 && _late.Allows(2L * text.Length)) Send(new OutputReply(_latest, new StreamOutput("stdout", text)));
    }

    private void Send(WorkerReply reply)
    {
        // A program that a cell started may have written here, and not ended its line: the reply begins one of its own.
        var line = $"\n{WorkerJson.Write(reply)}\n";
        lock (_writing) _replies.Write(line);
    }
}
