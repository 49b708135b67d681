using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A check valve: passes forward once the pressure ahead is above that behind by its cracking pressure, and never back.</summary>
/// <remarks>The spring takes the cracking pressure off the drop at any flow. Source: force balance of the poppet.</remarks>
/// <param name="Name">What it is called.</param>
/// <param name="Passage">What the gas has to squeeze through while it is open.</param>
/// <param name="Cracking">Cracking pressure; 0 to 20 bar.</param>
public sealed record CheckValvePart(string Name, IRestrictor Passage, Pressure Cracking) : LinePart(Name)
{
    /// <summary>Whether its arrow points against the link, from its end to its start.</summary>
    public bool PointsBack { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() =>
    [
        .. Passage.Validate(),
        .. new ValidRange<Pressure>(0.Bar(), 20.Bar()).Find(Cracking.ToUnit(UnitsNet.Units.PressureUnit.Bar),
            $"cracking pressure of the {Name}", "Some tenths of a bar are usual.") is { } wrong ? [wrong] : Array.Empty<Finding>(),
    ];

    internal override IRestrictor Narrowest => Passage;
}
