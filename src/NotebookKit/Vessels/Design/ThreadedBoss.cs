using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A closure screwed into a threaded ring.</summary>
/// <param name="Material">The weaker of the two threads' materials.</param>
/// <param name="PitchDiameter">Pitch diameter of the thread; 2 to 500 mm.</param>
/// <param name="Engagement">Length of thread that engages; 1 to 200 mm.</param>
public sealed record ThreadedBoss(IsotropicMaterial Material, Length PitchDiameter, Length Engagement) : EndJoint
{
    /// <inheritdoc/>
    public override string Name => "threaded boss";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. Material.Validate()];
        if (new ValidRange<Length>(2.Millimetres(), 500.Millimetres()).Find(PitchDiameter, "pitch diameter of the boss",
            "Measure the thread.") is { } pitch) findings.Add(pitch);
        if (new ValidRange<Length>(1.Millimetres(), 200.Millimetres()).Find(Engagement, "engagement of the boss",
            "Three turns at the least.") is { } engagement) findings.Add(engagement);
        return findings;
    }
}
