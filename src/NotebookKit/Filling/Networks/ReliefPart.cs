using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A relief valve on the way to the outside: shut to its set pressure, open in full at its overpressure above it.</summary>
/// <remarks>Between the two it lifts in proportion. Source: common practice; definitions of ISO 4126-1.</remarks>
/// <param name="Name">What it is called.</param>
/// <param name="Passage">What the gas has to squeeze through when it is open in full.</param>
/// <param name="Set">Set pressure; 0.5 to 300 bar gauge.</param>
public sealed record ReliefPart(string Name, IRestrictor Passage, GaugePressure Set) : LinePart(Name)
{
    /// <summary>Pressure above the set one at which it is open in full, over the set one; 1 to 25 %, 10 % unless given.</summary>
    public Ratio Overpressure { get; init; } = 10.Percent();

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() =>
    [
        .. Passage.Validate(),
        .. new[]
        {
            new ValidRange<GaugePressure>(0.5.BarGauge(), 300.BarGauge()).Find(Set, $"set pressure of the {Name}",
                "It is gauge, above the air outside."),
            new ValidRange<Ratio>(1.Percent(), 25.Percent()).Find(Overpressure.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                $"overpressure of the {Name}", "10 % is usual."),
        }.OfType<Finding>(),
    ];

    internal override IRestrictor Narrowest => Passage;
}
