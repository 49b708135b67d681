namespace NotebookKit.Interactive.Live;

/// <summary>How far something is.</summary>
/// <param name="What">What is counted.</param>
/// <param name="Done">How many are done.</param>
/// <param name="Of">How many there are.</param>
internal sealed record ProgressState(string What, int Done, int Of);
