namespace NotebookKit.Runner.Engine;

/// <summary>Helps while code is being written.</summary>
internal interface ILanguageHelp
{
    /// <summary>What could stand at a place.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="position">Place in it, counted in characters from 0.</param>
    /// <param name="cancellation">Gives up.</param>
    Task<CompletionList> CompleteAsync(string code, int position, CancellationToken cancellation);

    /// <summary>What stands at a place, in several media types; none where nothing can be said.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="position">Place in it, counted in characters from 0.</param>
    /// <param name="cancellation">Gives up.</param>
    Task<Description?> DescribeAsync(string code, int position, CancellationToken cancellation);
}

/// <summary>What is known about a name in the code.</summary>
/// <param name="Markdown">As Markdown.</param>
/// <param name="Text">As plain text.</param>
internal sealed record Description(string Markdown, string Text);

/// <summary>What could stand in place of a part of the code.</summary>
/// <param name="Start">First character replaced, from 0.</param>
/// <param name="End">Character after the last one replaced.</param>
/// <param name="Entries">What could stand there, best first.</param>
internal sealed record CompletionList(int Start, int End, IReadOnlyList<CompletionEntry> Entries);

/// <summary>One thing that could stand there.</summary>
/// <param name="Text">Text to put in.</param>
/// <param name="Kind">Method, property, class...</param>
internal sealed record CompletionEntry(string Text, string Kind);
