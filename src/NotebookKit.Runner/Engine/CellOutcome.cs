namespace NotebookKit.Runner.Engine;

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
