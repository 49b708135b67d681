using NotebookKit.Filling.Restrictors;
using NotebookKit.Filling.Supply;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Fills;

/// <summary>What a club fills with at the pad, as far as it says. What isn't given stays so; nothing is assumed for it.</summary>
/// <remarks>Source: none; what is computed with it names its own.</remarks>
public sealed record PadEquipment
{
    /// <summary>Pressure that the regulator is set to; none where it isn't given.</summary>
    public GaugePressure? Regulator { get; init; }

    /// <summary>The smallest passage on the way in; none where it isn't given.</summary>
    public IRestrictor? Restrictor { get; init; }

    /// <summary>The hose ahead of it, where it takes pressure; none where it isn't given.</summary>
    public Hose? Hose { get; init; }

    /// <summary>What resists on the way in: the smallest passage, behind the hose where there is one; none where it isn't given.</summary>
    public IRestrictor? Passage => Restrictor is { } hole && Hose is { } hose ? new RestrictorChain(hose, hole) : Restrictor;

    /// <summary>Where the filling port lies.</summary>
    public PortPosition Port { get; init; }

    /// <summary>Water that stands in port and line when the valve opens; none where it isn't given.</summary>
    public Volume? WaterInLine { get; init; }

    /// <summary>The smallest passage on the way out through the dump valve; none where it isn't given.</summary>
    public IRestrictor? Vent { get; init; }

    /// <summary>The cylinder; none where it isn't given.</summary>
    public SourceCylinder? Cylinder { get; init; }

    /// <summary>Parts of the line that are there, with their ratings as far as given; each kind once.</summary>
    public IReadOnlyList<PadPart> Parts { get; init; } = [];

    /// <summary>What is said of a check valve apart from the parts; none where nothing is.</summary>
    public bool? CheckValve { get; init; }

    /// <summary>Whether a check valve keeps water from running back; as the parts say where nothing else is said, and not known where no
    /// part is given either.</summary>
    public bool? HasCheckValve => CheckValve is { } said ? said : Parts.Count == 0 ? null
        : Parts.Any(p => p is { Kind: PadPartKind.CheckValve, IsGiven: true });

    /// <summary>What a fill needs and isn't given, by name; empty where nothing is missing.</summary>
    public IReadOnlyList<string> Missing => [.. Regulator is null ? ["pressure that the regulator is set to"] : Array.Empty<string>(),
        .. Restrictor is null ? ["smallest passage on the way in"] : Array.Empty<string>()];

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Parts.GroupBy(p => p.Kind).Where(g => g.Count() > 1).Select(g => FillingFindings.PadPartTwice(g.First().Name)),
        .. Restrictor?.Validate() ?? [], .. Hose?.Validate() ?? [], .. Vent?.Validate() ?? [], .. Cylinder?.Validate() ?? [],
    ];
}
