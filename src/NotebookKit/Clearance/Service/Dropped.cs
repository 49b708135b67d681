using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>The vessel fell on the bench, the floor or the field.</summary>
/// <param name="Height">Height it fell from; 1 mm to 2000 m.</param>
public sealed record Dropped(Length Height) : ServiceEvent
{
    internal const string Name = "dropped";

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data => [("height", ServiceText.Of(Height))];

    internal static Dropped From(ServiceFields fields) => new(fields.Quantity<Length>("height", "0.8 m"));

    private protected override IEnumerable<Finding?> Check() =>
        [new ValidRange<Length>(0.001.Metres(), 2000.Metres()).Find(Height.ToUnit(UnitsNet.Units.LengthUnit.Meter), "height of the drop",
            "Give the height of the fall.")];
}
