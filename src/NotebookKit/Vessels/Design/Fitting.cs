using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>What fills the opening of a closure: a nozzle, a filling port, a plug.</summary>
/// <remarks>Source: geometry; what it holds is the floor above.</remarks>
public abstract record Fitting
{
    /// <summary>What it is called in results.</summary>
    public abstract string Name { get; }

    /// <summary>What seals it; none where that isn't given.</summary>
    public Seal? Seal { get; init; }

    /// <summary>Its mass; 0 to 20 kg.</summary>
    public Mass Mass { get; init; } = 0.Grams();

    /// <summary>All that is wrong with it.</summary>
    /// <param name="closure">Closure whose opening it fills.</param>
    public virtual IReadOnlyList<Finding> Validate(Closure closure)
    {
        ArgumentNullException.ThrowIfNull(closure);
        List<Finding> findings = [.. Seal?.Validate() ?? []];
        if (new ValidRange<Mass>(0.Grams(), 20.Kilograms()).Find(Mass, $"mass of the {Name}", "Weigh the fitting.") is { } mass)
            findings.Add(mass);
        if (!(closure.Opening.Meters > 0)) findings.Add(VesselsFindings.FittingHasNoOpening(Name, closure.Shape));
        return findings;
    }

    private protected static void Add(List<Finding> findings, params IReadOnlyList<Finding?> found) =>
        findings.AddRange(found.OfType<Finding>());
}
