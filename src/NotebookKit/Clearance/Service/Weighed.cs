using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>The empty, dry vessel was weighed.</summary>
/// <param name="Mass">Its mass; 1 g to 100 kg.</param>
public sealed record Weighed(Mass Mass) : ServiceEvent
{
    internal const string Name = "weighed";

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data => [("mass", ServiceText.Of(Mass))];

    internal static Weighed From(ServiceFields fields) => new(fields.Quantity<Mass>("mass", "412 g"));

    private protected override IEnumerable<Finding?> Check()
        => [Made.Masses.Find(Mass.ToUnit(UnitsNet.Units.MassUnit.Gram), "mass", "Weigh it empty and dry.")];
}
