using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Running;

/// <summary>Shows a run to the person waiting for it.</summary>
internal interface IRunDisplay
{
    /// <summary>A notebook is being started.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="cells">Code cells it has.</param>
    void Started(string name, int cells);

    /// <summary>A cell begins, or is somewhat further.</summary>
    /// <param name="name">Name of the notebook.</param>
    /// <param name="cell">Number of the cell.</param>
    /// <param name="progress">How far its computation is; none as it begins.</param>
    void Running(string name, int cell, string? progress);

    /// <summary>A notebook has ended.</summary>
    /// <param name="report">What became of it.</param>
    void Ended(NotebookReport report);
}
