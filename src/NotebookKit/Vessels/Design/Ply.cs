using NotebookKit.Provenance;
using NotebookKit.Vessels.Limits;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>One thing laid on a vessel, from the inside out: a sleeve, a cloth wrap, a hoop wrap, a veil.</summary>
public abstract record Ply
{
    /// <summary>What it is called in results.</summary>
    public abstract string Name { get; }

    /// <summary>Its fibre volume fraction where it differs from the vessel's; 5 to 78.5 %.</summary>
    public Ratio? FibreFraction { get; init; }

    /// <summary>User's values its materials use, a line each.</summary>
    public abstract IReadOnlyList<string> Overrides { get; }

    /// <summary>All that is wrong with it, the diameter it lies on apart.</summary>
    public virtual IReadOnlyList<Finding> Validate() =>
        FibreFraction is { } fraction && CompositeLimits.FindFibreFraction(fraction, $"fibre volume fraction of {Name}") is { } finding
            ? [finding] : [];
}
