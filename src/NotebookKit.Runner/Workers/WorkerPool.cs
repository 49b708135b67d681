using System.Collections.Concurrent;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Givens;

namespace NotebookKit.Runner.Workers;

/// <summary>
/// Workers of one run. One whose cells ran, or were refused by the library, and left nothing behind takes the next notebook in a fresh
/// session, its compiler warm; any other ends with its notebook.
/// </summary>
internal sealed class WorkerPool
{
    private readonly ConcurrentBag<Pooled> _idle = [];

    /// <summary>A session of its own.</summary>
    /// <param name="options">How it is started; all of a pool are the same but for the folder.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<INotebookEngine> StartAsync(WorkerOptions options, CancellationToken cancellation)
    {
        while (_idle.TryTake(out var warm))
        {
            var renewed = false;
            try
            {
                renewed = warm.Serves(options) && await warm.RenewAsync(options.WorkingDirectory, cancellation);
                if (renewed) return warm;
            }
            finally
            {
                if (!renewed) await warm.EndAsync();
            }
        }

        return new Pooled(this, options, await WorkerEngine.StartAsync(options, cancellation));
    }

    /// <summary>Ends those that wait for a notebook.</summary>
    public async Task EndAsync()
    {
        while (_idle.TryTake(out var worker)) await worker.EndAsync();
    }

    private sealed class Pooled(WorkerPool pool, WorkerOptions options, WorkerEngine engine) : INotebookEngine
    {
        private bool _sound = true;

        // A batch has a folder of its own for each notebook, and givens know which of them were taken over.
        public bool Serves(WorkerOptions asked) => options.Batch is null
            && !RunGivens.Assignments(options.Givens ?? GivenOverrides.None).Any()
            && asked == options with { WorkingDirectory = asked.WorkingDirectory };

        public async Task<bool> RenewAsync(string folder, CancellationToken cancellation)
        {
            try
            {
                return await engine.RenewAsync(folder, cancellation) is null;
            }
            catch (TimeoutException)
            {
                return false;
            }
        }

        public async Task<CellOutcome> RunAsync(string code, Action<CellOutput> output, CancellationToken cancellation)
        {
            // Also where it is given up without an outcome.
            var before = _sound;
            _sound = false;
            var outcome = await engine.RunAsync(code, output, cancellation);
            // What the library refuses is an answer, as a lesson shows it.
            _sound = before && outcome is { Status: CellStatus.Succeeded } or { Status: CellStatus.Failed, Error.Kind: CellError.Refused };
            return outcome;
        }

        public ValueTask EndAsync() => engine.DisposeAsync();

        public async ValueTask DisposeAsync()
        {
            if (_sound) pool._idle.Add(this);
            else await EndAsync();
        }
    }
}
