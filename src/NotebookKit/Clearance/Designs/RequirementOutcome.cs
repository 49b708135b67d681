using NotebookKit.DesignFiles.Parts;

namespace NotebookKit.Clearance.Designs;

/// <summary>What a check found of one requirement of a design.</summary>
/// <param name="Requirement">The requirement.</param>
/// <param name="Verdict">Whether it holds.</param>
/// <param name="Value">The figure as computed, with its unit; empty where it can't be.</param>
/// <param name="Reason">Why it can't be told; empty where it can.</param>
public sealed record RequirementOutcome(DesignRequirement Requirement, RequirementVerdict Verdict, string Value, string Reason)
{
    internal object? Computed { get; init; }
}

/// <summary>Whether a requirement of a design holds.</summary>
public enum RequirementVerdict
{
    /// <summary>It holds.</summary>
    Holds,

    /// <summary>It doesn't hold, or no longer.</summary>
    NoLongerHolds,

    /// <summary>Its figure can't be computed, or rests on what isn't given.</summary>
    CannotTell,
}
