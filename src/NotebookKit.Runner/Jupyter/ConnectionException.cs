namespace NotebookKit.Runner.Jupyter;

/// <summary>No front-end can be served as asked.</summary>
/// <param name="reason">Why, a sentence.</param>
internal sealed class ConnectionException(string reason) : Exception(reason);
