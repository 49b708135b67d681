namespace NotebookKit.Runner.Givens;

/// <summary>The givens of one notebook and of the files it loads.</summary>
/// <param name="Notebook">Name of the notebook.</param>
/// <param name="Givens">What its code states, in order.</param>
/// <param name="Unreadable">Why there may be givens that can't be told before it runs, a clause each; empty where all can.</param>
internal sealed record NotebookGivens(string Notebook, IReadOnlyList<StatedGiven> Givens, IReadOnlyList<string> Unreadable)
{
    /// <summary>Those of a name, upper and lower case alike; a notebook may state one more than once.</summary>
    /// <param name="name">Name.</param>
    public IEnumerable<StatedGiven> Named(string name) => Givens.Where(g => string.Equals(g.Name, name, StringComparison.OrdinalIgnoreCase));
}
