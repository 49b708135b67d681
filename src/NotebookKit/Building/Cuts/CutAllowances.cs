using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Cuts;

/// <summary>What is cut longer than the vessel needs. Source: common practice.</summary>
public sealed record CutAllowances
{
    /// <summary>Added at each end of sleeves, cloths and veils, trimmed after curing; 0 to 500 mm, 40 mm unless given.</summary>
    public Length PerEnd { get; init; } = 40.Millimetres();

    /// <summary>Overlap where a cloth is joined from sections; 5 to 200 mm, 25 mm unless given.</summary>
    public Length Join { get; init; } = 25.Millimetres();

    /// <summary>Turns of tape that start and end a layer of a hoop wrap; 0 to 20, 2 unless given.</summary>
    public int TapeTurns { get; init; } = 2;

    /// <summary>Whether the outside is covered by peel ply.</summary>
    public bool PeelPly { get; init; } = true;

    /// <summary>Everything wrong with them.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Length>(Length.Zero, 500.Millimetres()).Find(PerEnd, "allowance at each end", "40 mm is common practice."),
            new ValidRange<Length>(5.Millimetres(), 200.Millimetres()).Find(Join, "overlap of a join", "25 mm is common practice."),
            new ValidRange<double>(0, 20).Find(TapeTurns, "turns of tape that start and end a layer", "Two hold it."),
        }.OfType<Finding>().ToList();
}
