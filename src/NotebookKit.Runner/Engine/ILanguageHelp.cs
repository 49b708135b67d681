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
