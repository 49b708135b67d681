namespace NotebookKit.Runner.Running;

/// <summary>What to run, how, and where to put it.</summary>
/// <param name="Notebooks">Files to run, in order.</param>
/// <param name="OutputFolder">Folder that gets the executed notebooks and the pages.</param>
/// <param name="CellLimit">How long one cell may run; above 0.</param>
/// <param name="Jobs">How many notebooks run at a time; 1 or more.</param>
internal sealed record RunOptions(IReadOnlyList<string> Notebooks, string OutputFolder, TimeSpan CellLimit, int Jobs)
{
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

    /// <summary>Where the list of all pages goes.</summary>
    public string IndexFile => Path.Combine(OutputFolder, "index.html");
}
