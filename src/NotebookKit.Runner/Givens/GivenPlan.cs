namespace NotebookKit.Runner.Givens;

/// <summary>What a run with other givens has to say before it starts, and what has to have happened in each notebook when it ends.</summary>
/// <param name="MustTake">The givens that some cell of a notebook has to have taken over, by the notebook's name.</param>
/// <param name="Notes">What the reader should know, a sentence each.</param>
internal sealed record GivenPlan(IReadOnlyDictionary<string, IReadOnlyList<string>> MustTake, IReadOnlyList<string> Notes)
{
    /// <summary>A run on the notebooks' own values.</summary>
    public static GivenPlan None { get; } = new(new Dictionary<string, IReadOnlyList<string>>(), []);
}
