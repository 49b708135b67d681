using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A line between two places of a network, its parts in the order in which the gas meets them.</summary>
/// <param name="From">Name of the place it begins at.</param>
/// <param name="To">Name of the place it ends at.</param>
/// <param name="Parts">Its parts; one at the least that narrows the line.</param>
public sealed record PadLink(string From, string To, IReadOnlyList<LinePart> Parts)
{
    /// <summary>Where its port at <see cref="From"/> lies; above the water unless given.</summary>
    public PortPosition FromPort { get; init; }

    /// <summary>Where its port at <see cref="To"/> lies; above the water unless given.</summary>
    public PortPosition ToPort { get; init; }

    /// <summary>Water that stands in the line at the start and is pushed into <see cref="To"/> first, and on from it where that
    /// is a junction; none unless given.</summary>
    public Volume? WaterInLine { get; init; }

    /// <summary>For example "cylinder to booster".</summary>
    public string Name => $"{From} to {To}";

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Parts.SelectMany(p => p.Validate()),
        .. new[]
        {
            Parts.All(p => p.Narrowest is null) ? FillingFindings.LinkHasNoPassage(Name) : null,
            From == To ? FillingFindings.LinkEndsWhereItBegins(Name) : null,
            Parts.OfType<RegulatorPart>().Count() > 1 ? FillingFindings.TwoRegulatorsInLink(Name) : null,
            Parts.OfType<CheckValvePart>().FirstOrDefault(c => c.PointsBack) is { } back
                ? FillingFindings.CheckValvePointsBack(back.Name, From, To) : null,
            WaterInLine is { } line ? new ValidRange<Volume>(0.01.Millilitres(), 10.Litres()).Find(line, $"water in the line {Name}",
                "A metre of 6 mm hose holds 28 mL.") : null,
        }.OfType<Finding>(),
    ];

    /// <summary>Whether gas or water never flows back through it.</summary>
    internal bool IsOneWay => Parts.Any(p => p is CheckValvePart or RegulatorPart or ReliefPart);
}
