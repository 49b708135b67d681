using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>The vessel hit the ground faster than its canopy should let it, or on something hard.</summary>
public sealed record LandedHard : ServiceEvent
{
    internal const string Name = "landed-hard";

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data => [];

    internal static LandedHard From(ServiceFields _) => new();

    private protected override IEnumerable<Finding?> Check() => [];
}
