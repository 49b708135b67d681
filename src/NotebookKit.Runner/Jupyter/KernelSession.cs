using System.Globalization;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Givens;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Jupyter;

/// <summary>The worker behind a kernel. It is replaced when it is lost; what was lost with it is told with the cell that lost it.</summary>
internal sealed class KernelSession : IAsyncDisposable
{
    // With the time a cell gets to stop by itself, a stuck worker is replaced within two seconds.
    private static readonly TimeSpan StopGrace = TimeSpan.FromSeconds(1.7);

    private static readonly TimeSpan HelpPatience = TimeSpan.FromSeconds(10);

    /// <summary>How many cells run before a fresh session is offered, unless given. At a quarter of a megabyte each they hold
    /// two thirds of the memory that a session starts with.</summary>
    public const int UsualCells = 1000;

    private readonly WorkerOptions _options;
    private readonly int _offerAfter;
    private int _cells;
    // By first run, which is the order they build on each other in.
    private readonly OrderedDictionary<string, int> _cellsRun = new(StringComparer.Ordinal);
    private readonly Action<WorkerReply> _controls;
    private readonly CancellationTokenSource _closing = new();
    private Task<WorkerEngine> _engine;

    /// <summary>Starts the worker; a first cell waits for it.</summary>
    /// <param name="folder">Folder that relative paths in cells start from.</param>
    /// <param name="controls">Told of controls that cells make and change.</param>
    /// <param name="offerAfter">After how many cells a fresh session is offered, and after as many more again; 1 or more.</param>
    public KernelSession(string folder, Action<WorkerReply> controls, int offerAfter = UsualCells)
    {
        _offerAfter = offerAfter;
        _options = new WorkerOptions(folder, OutputLimitBytes: 50_000_000, StopGrace: StopGrace, Live: true, Givens: RunGivens.Of([]));
        this._controls = controls;
        _engine = StartAsync();
    }

    /// <summary>Done when the worker is up, failed when it couldn't start, cancelled when the session was closed before.</summary>
    public Task Up => _engine;

    /// <summary>Told of what is printed when no cell runs.</summary>
    public Action<CellOutput>? Late { get; set; }

    /// <summary>Runs a cell. A lost session is replaced and the outcome's message says what that means.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="number">Its number, to be told when it has to be run again; 0 for one that doesn't count.</param>
    /// <param name="cell">What the front-end calls the cell, that one that ran twice is told once; empty where it doesn't say.</param>
    /// <param name="output">Gets every output.</param>
    /// <param name="ask">Asks the reader; none where nobody can be asked.</param>
    /// <param name="cancellation">Interrupts it.</param>
    public async Task<CellOutcome> RunAsync(string code, int number, string cell, Action<CellOutput> output, Func<InputRequest,
        Task<string?>>? ask, CancellationToken cancellation)
    {
        WorkerEngine worker;
        try
        {
            worker = await _engine.WaitAsync(cancellation);
        }
        catch (OperationCanceledException)
        {
            return new(CellStatus.Interrupted, CellError.Plain("Interrupted", "The cell was stopped before it began."));
        }
        catch (EngineStartException e)
        {
            _engine = StartAsync();
            return new(CellStatus.EngineFailed, CellError.Plain("EngineStart",
                $"{e.Message} It is being started again: run the cell once more."));
        }

        worker.Asking = ask;
        var outcome = await worker.RunAsync(code, output, cancellation);
        worker.Asking = null;
        if (outcome.SessionLost) return await ReplaceAsync(worker, outcome);
        if (++_cells % _offerAfter == 0) output(new StreamOutput("stderr", Offer(_cells)));
        if (number > 0 && outcome.Status == CellStatus.Succeeded) _cellsRun[cell.Length > 0 ? cell
            : string.Create(CultureInfo.InvariantCulture, $"{number}")] = number;
        return outcome;
    }

    /// <summary>Tells the session that the reader moved a control, and waits until it has answered. A lost session is replaced as after a
    /// cell.</summary>
    /// <param name="control">Id of the control.</param>
    /// <param name="state">Values that changed.</param>
    /// <param name="cancellation">Interrupts what the control set off.</param>
    public async Task<CellOutcome> MoveAsync(string control, JsonObject state, CancellationToken cancellation)
    {
        if (await WorkerAsync() is not { } worker) return CellOutcome.Success;
        var outcome = await worker.MoveAsync(control, state, cancellation);
        return outcome.SessionLost ? await ReplaceAsync(worker, outcome) : outcome;
    }

    /// <summary>What could stand at a place; nothing where the worker couldn't start.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="position">Place, from 0.</param>
    public async Task<CompletionList> CompleteAsync(string code, int position) =>
        await HelpAsync((worker, limit) => worker.CompleteAsync(code, position, limit)) ?? new CompletionList(position, position, []);

    /// <summary>What stands at a place; nothing where the worker couldn't start.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="position">Place, from 0.</param>
    public async Task<Description?> DescribeAsync(string code, int position) =>
        await HelpAsync((worker, limit) => worker.DescribeAsync(code, position, limit));

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        // A worker that is still starting isn't waited for.
        await _closing.CancelAsync();
        if (await WorkerAsync() is { } worker) await worker.DisposeAsync();
        _closing.Dispose();
    }

    // Help that comes late is no help; the author types on.
    private async Task<T?> HelpAsync<T>(Func<WorkerEngine, CancellationToken, Task<T>> ask)
        where T : class?
    {
        if (await WorkerAsync() is not { } worker) return null;
        using var limit = new CancellationTokenSource(HelpPatience);
        try
        {
            return await ask(worker, limit.Token);
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }

    private async Task<WorkerEngine?> WorkerAsync()
    {
        try
        {
            return await _engine;
        }
        catch (Exception e) when (e is EngineStartException or OperationCanceledException)
        {
            return null;
        }
    }

    private async Task<WorkerEngine> StartAsync()
    {
        var worker = await WorkerEngine.StartAsync(_options, _closing.Token);
        worker.Controls = _controls;
        worker.Late = output => Late?.Invoke(output);
        return worker;
    }

    // A later cell may use every earlier one, so that the compiler holds on to all of them.
    private static string Offer(int cells) => FormattableString.Invariant($"This session has run {cells} cells. The compiler keeps ")
        + "every cell until the session ends, about a quarter of a megabyte each. Restart the kernel when you next pause, and run the "
        + "cells again that you need.\n";

    private async Task<CellOutcome> ReplaceAsync(WorkerEngine lost, CellOutcome outcome)
    {
        await lost.DisposeAsync();
        _cells = 0;
        _engine = StartAsync();
        var again = _cellsRun.Count == 0
            ? "No cell had run in it."
            : $"Variables are lost: run these cells again, in order: {string.Join(", ", _cellsRun.Values.Select(n => $"[{n}]"))}.";
        _cellsRun.Clear();
        var error = outcome.Error!;
        return outcome with { Error = error with { Message = $"{error.Message} The session was replaced by a fresh one. {again}" } };
    }
}
