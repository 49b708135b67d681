using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Networks;

/// <summary>A supply that never ends, at one pressure and the temperature of the surroundings.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Pressure">Its pressure; 0 to 300 bar gauge.</param>
public sealed record SupplyNode(string Name, GaugePressure Pressure) : PadNode(Name)
{
    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() =>
        new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(Pressure, $"pressure of {Name}",
            "It is gauge, above the air outside.") is { } wrong ? [wrong] : [];

    internal override bool IsPart => false;
}
