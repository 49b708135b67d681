using NotebookKit.Interactive.Formatters;
using NotebookKit.Record;
using NotebookKit.Sheets;

namespace NotebookKit.Runner.Reports;

/// <summary>What a notebook comes to.</summary>
/// <param name="Numbers">Main numbers it published, in order.</param>
/// <param name="Verdicts">The last decision on each subject, in order of their subjects.</param>
internal sealed record NotebookAnswer(IReadOnlyList<Headline> Numbers, IReadOnlyList<MainVerdict> Verdicts)
{
    /// <summary>Of a notebook that says nothing.</summary>
    public static NotebookAnswer None { get; } = new([], []);

    /// <summary>Its designs' requirements; none where it states none.</summary>
    public IReadOnlyList<RequirementTable> Requirements { get; init; } = [];

    /// <summary>Sheets of flights that it shows, the last of each title.</summary>
    public IReadOnlyList<SheetContent> Sheets { get; init; } = [];

    /// <summary>Givens on which this run differs, a line each.</summary>
    public IReadOnlyList<string> ChangedGivens { get; init; } = [];

    /// <summary>What kept the last record from being read, a sentence; empty where nothing did.</summary>
    public string RecordNote { get; init; } = "";

    /// <summary>What may be said of a notebook that failed: its decisions and main numbers may rest on what it never reached.</summary>
    public NotebookAnswer OfFailed => this with { Numbers = [], Verdicts = [], Sheets = [] };
}
