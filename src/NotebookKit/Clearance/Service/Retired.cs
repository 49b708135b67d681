using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>The vessel was taken out of use for good.</summary>
/// <param name="Reason">Why.</param>
public sealed record Retired(string Reason) : ServiceEvent
{
    internal const string Name = "retired";

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data => [("reason", Reason)];

    internal static Retired From(ServiceFields fields) => new(fields.Text("reason"));

    private protected override IEnumerable<Finding?> Check() => [ServiceText.Find(Reason, "reason", LongestText)];
}
