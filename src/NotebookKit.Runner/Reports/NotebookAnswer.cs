using NotebookKit.Interactive.Formatters;
using NotebookKit.Record;

namespace NotebookKit.Runner.Reports;

/// <summary>What a notebook comes to.</summary>
/// <param name="Numbers">Main numbers it published, in order.</param>
/// <param name="Verdicts">The last decision on each subject, in order of their subjects.</param>
internal sealed record NotebookAnswer(IReadOnlyList<Headline> Numbers, IReadOnlyList<MainVerdict> Verdicts)
{
    /// <summary>Of a notebook that says nothing.</summary>
    public static NotebookAnswer None { get; } = new([], []);
}
