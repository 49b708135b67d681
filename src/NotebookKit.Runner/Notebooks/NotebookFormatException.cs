namespace NotebookKit.Runner.Notebooks;

/// <summary>A file isn't a notebook that can be run.</summary>
/// <param name="reason">What is wrong with it and what to do, a sentence.</param>
internal sealed class NotebookFormatException(string reason) : Exception(reason);
