using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Drawings;

/// <summary>Pieces laid out on one stock sheet.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Length">Length of the sheet, along its grain; above 0.</param>
/// <param name="Width">Width of the sheet; above 0.</param>
/// <param name="Pieces">The pieces: a name and the corners, along and across, of each.</param>
public sealed record CutPlan(string Title, Length Length, Length Width,
    IReadOnlyList<(string Name, IReadOnlyList<(Length Along, Length Across)> Corners)> Pieces)
{
    /// <summary>How much of the sheet is used, from its start; none draws no line.</summary>
    public Length? Used { get; init; }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [];
        if (!(Length > Length.Zero) || !(Width > Length.Zero)) findings.Add(Finding.Error($"The sheet is {Length.Show()} × "
            + $"{Width.Show()}; both must be above 0."));
        findings.AddRange(Pieces.Where(p => p.Corners.Count < 3).Select(p => Finding.Error($"'{p.Name}' has {p.Corners.Count} corners; "
            + "it needs at least 3.")));
        return findings;
    }
}
