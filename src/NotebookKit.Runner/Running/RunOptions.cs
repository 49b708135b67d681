using NotebookKit.Flight.Dispersion;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Batch;
using NotebookKit.Runner.Givens;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Running;

/// <summary>What to run, how, and where to put it.</summary>
/// <param name="Notebooks">Files to run, in order.</param>
/// <param name="OutputFolder">Folder that gets the executed notebooks and the pages.</param>
/// <param name="CellLimit">How long one cell may run; above 0.</param>
/// <param name="Jobs">How many notebooks run at a time; 1 or more.</param>
internal sealed record RunOptions(IReadOnlyList<string> Notebooks, string OutputFolder, TimeSpan CellLimit, int Jobs)
{
    /// <summary>The part to fly of every dispersion, and nothing else to write; none for an ordinary run.</summary>
    public ShardNumber? Shard { get; init; }

    /// <summary>Folder with merged dispersions that stand in for flying; none where there is none.</summary>
    public string? Flown { get; init; }

    /// <summary>Whether each page holds the chart library itself, to be mailed alone, instead of sharing the folder's copy.</summary>
    public bool Single { get; init; }

    /// <summary>Values that stand in for the notebooks' own givens.</summary>
    public GivenOverrides Givens { get; init; } = GivenOverrides.None;

    /// <summary>The givens that some cell has to have taken over when a notebook ends, by the notebook's name.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> MustTake { get; init; } = GivenPlan.None.MustTake;

    /// <summary>Record to hold requirements against instead of the kept one of the last run; none takes the kept one.</summary>
    public string? LastRecord { get; init; }

    /// <summary>Where the records of a notebook are kept from run to run.</summary>
    /// <param name="name">Its name.</param>
    public string RecordFolder(string name) => Path.Combine(OutputFolder, "records", name);

    /// <summary>The givens that this run sets in a notebook, with their values.</summary>
    /// <param name="name">Its name.</param>
    public IReadOnlyList<(string Name, string Text)> SetIn(string name) =>
        [.. MustTake.GetValueOrDefault(name, []).Select(g => (g, Givens.TextOf(g) ?? ""))];

    /// <summary>Where the parts of a notebook's dispersions go.</summary>
    /// <param name="name">Its name.</param>
    public string ShardFolder(string name) => Path.Combine(OutputFolder, "shards", name);

    /// <summary>What becomes of a notebook's dispersions; none just flies them.</summary>
    /// <param name="name">Its name.</param>
    public BatchOptions? BatchOf(string name) =>
        Shard is { } shard ? new(shard, ShardFolder(name), null)
        : Flown is { } flown ? new(ShardNumber.Whole, null, flown)
        : null;

    /// <summary>The time a cell gets unless told otherwise.</summary>
    public static TimeSpan UsualCellLimit { get; } = TimeSpan.FromSeconds(60);

    /// <summary>How many notebooks run at a time unless told otherwise.</summary>
    public static int UsualJobs => Math.Clamp(Environment.ProcessorCount, 1, 4);

    /// <summary>Where the executed copy of a notebook goes.</summary>
    /// <param name="name">Its name.</param>
    public string ExecutedFile(string name) => Path.Combine(OutputFolder, "notebooks", name + ".ipynb");

    /// <summary>Where the page of a notebook goes.</summary>
    /// <param name="name">Its name.</param>
    public string PageFile(string name) => Path.Combine(OutputFolder, "pages", name + ".html");

    /// <summary>The chart library that the pages share.</summary>
    public string LibraryFile => Path.Combine(OutputFolder, "pages", PageFrame.LibraryFile);

    /// <summary>The font of equations that the pages share.</summary>
    public string FontFile => Path.Combine(OutputFolder, "pages", PageFrame.FontFile);

    /// <summary>Folder of the sheets for the bench and the pad.</summary>
    public string SheetFolder => Path.Combine(OutputFolder, "sheets");

    /// <summary>Where the page that computes by itself goes.</summary>
    public string LivePage => Path.Combine(OutputFolder, Pages.LivePage.FileName);

    /// <summary>Where the list of all pages goes.</summary>
    public string IndexFile => Path.Combine(OutputFolder, "index.html");
}
