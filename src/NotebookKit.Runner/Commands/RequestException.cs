namespace NotebookKit.Runner.Commands;

/// <summary>The command line asks for something that can't be done.</summary>
/// <param name="reason">What and what to do, a sentence.</param>
internal sealed class RequestException(string reason) : Exception(reason);
