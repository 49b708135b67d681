namespace NotebookKit.Runner.Workers;

/// <summary>A session couldn't be started.</summary>
/// <param name="reason">Why.</param>
internal sealed class EngineStartException(string reason) : Exception(reason);
