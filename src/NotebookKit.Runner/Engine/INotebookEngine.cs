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

/// <summary>How a cell ended.</summary>
/// <param name="Status">Whether it ran to its end, and if not, why.</param>
/// <param name="Error">What went wrong; none where nothing did.</param>
internal sealed record CellOutcome(CellStatus Status, CellError? Error = null)
{
    /// <summary>Whether the session and its variables are gone.</summary>
    public bool SessionLost => Status >= CellStatus.Abandoned;

    /// <summary>Ran to its end.</summary>
    public static CellOutcome Success { get; } = new(CellStatus.Succeeded);
}
