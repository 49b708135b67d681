namespace NotebookKit.Runner.Engine;

/// <summary>Runs the code of one session, cell after cell; variables live on from one to the next.</summary>
internal interface INotebookEngine : IAsyncDisposable
{
    /// <summary>Runs one cell. A cell that fails is an outcome, not an exception.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="output">Gets every output while the cell runs, in order.</param>
    /// <param name="cancellation">Asks the cell to stop; code that never looks can't be stopped this way.</param>
    Task<CellOutcome> RunAsync(string code, Action<CellOutput> output, CancellationToken cancellation);
}
