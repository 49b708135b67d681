namespace NotebookKit.Runner.Commands;

/// <summary>The command line asks for something that can't be done.</summary>
/// <param name="reason">What and what to do, a sentence.</param>
/// <param name="details">Lines that help to put it right, such as a list to choose from.</param>
internal sealed class RequestException(string reason, params IReadOnlyList<string> details) : Exception(reason)
{
    /// <summary>Lines that help to put it right; empty where the sentence says all.</summary>
    public IReadOnlyList<string> Details => details;
}
