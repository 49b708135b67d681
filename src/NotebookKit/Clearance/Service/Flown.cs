using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>The vessel flew. The fill before it is an event of its own.</summary>
/// <param name="Flight">The flight's name or number.</param>
public sealed record Flown(string Flight) : ServiceEvent
{
    internal const string Name = "flown";

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data => [("flight", Flight)];

    internal static Flown From(ServiceFields fields) => new(fields.Text("flight"));

    private protected override IEnumerable<Finding?> Check() => [ServiceText.Find(Flight, "flight", LongestText)];
}
