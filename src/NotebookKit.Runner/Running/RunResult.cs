using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Running;

/// <summary>What came of a run.</summary>
/// <param name="Reports">What became of each notebook, in order.</param>
/// <param name="Problems">What couldn't be written that belongs to no notebook, a sentence each.</param>
/// <param name="HasIndex">Whether the list of all pages was written.</param>
internal sealed record RunResult(IReadOnlyList<NotebookReport> Reports, IReadOnlyList<string> Problems, bool HasIndex)
{
    /// <summary>Whether every notebook ran to its end and everything was written.</summary>
    public bool Passed => Problems.Count == 0 && Reports.All(r => r.Passed);
}
