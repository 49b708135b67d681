using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>Something that holds pressure, or that is bonded to it, was mended or changed.</summary>
/// <param name="What">What was done.</param>
public sealed record Repaired(string What) : ServiceEvent
{
    internal const string Name = "repaired";

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data => [("what", What)];

    internal static Repaired From(ServiceFields fields) => new(fields.Text("what"));

    private protected override IEnumerable<Finding?> Check() => [ServiceText.Find(What, "what was repaired", LongestText)];
}
