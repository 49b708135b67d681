using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Materials.Solids;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>What a file says, before anything is computed.</summary>
internal sealed record DesignContent(string Name, string About, MaterialLibrary Materials, LaunchSite? Site,
    IReadOnlyList<DesignRequirement> Requirements, IReadOnlyList<DesignDecision> Decisions)
{
    /// <summary>Its stages with their names, the lowest first; one without a name where it has one stage.</summary>
    public IReadOnlyList<(string Name, StageContent Stage)> Stages { get; init; } = [];

    public Separation? Separation { get; init; }

    public DesignScatter? Scatter { get; init; }
}
