using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Reports;

/// <summary>What became of one notebook.</summary>
/// <param name="Name">File name without folder and ending.</param>
/// <param name="Title">Its first heading, or its name.</param>
/// <param name="Summary">Its first paragraph, plain; empty where it has none.</param>
/// <param name="CellsRun">Code cells that ran.</param>
/// <param name="CellCount">Code cells it has.</param>
/// <param name="Took">How long it took, from start of its engine to the written page.</param>
/// <param name="Answer">What it comes to.</param>
/// <param name="Failures">The cells that failed it, in order; none where it passed.</param>
/// <param name="NotComputed">Code cells that weren't run, because they need what a failed cell would have made, or because the session had
/// ended.</param>
/// <param name="ExecutedFile">The executed notebook; none where none could be made.</param>
/// <param name="PageFile">The exported page; none where none could be made.</param>
internal sealed record NotebookReport(
    string Name,
    string Title,
    string Summary,
    int CellsRun,
    int CellCount,
    TimeSpan Took,
    NotebookAnswer Answer,
    IReadOnlyList<CellFailure> Failures,
    int NotComputed,
    string? ExecutedFile,
    string? PageFile)
{
    /// <summary>Where its page has card, plans and record, and its picture.</summary>
    public PagePlaces Places { get; init; } = new();

    /// <summary>Whether every cell ran, or failed as intended.</summary>
    public bool Passed => Failures.Count == 0;

    /// <summary>The first cell that failed it; none where it passed.</summary>
    public CellFailure? Failure => Failures.Count > 0 ? Failures[0] : null;

    /// <summary>How many cells weren't computed: "2 of 9 cells were not computed."; empty where all were.</summary>
    public string Missing => NotComputedText.Of(NotComputed, CellCount);
}
