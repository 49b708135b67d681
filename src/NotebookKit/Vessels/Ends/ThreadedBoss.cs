using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>A closure screwed into a threaded ring.</summary>
/// <param name="Material">The weaker of the two threads' materials.</param>
/// <param name="PitchDiameter">Pitch diameter of the thread; 2 to 500 mm.</param>
/// <param name="Engagement">Length of thread that engages; 1 to 200 mm.</param>
/// <remarks>
/// Half of the cylinder π·d·l is taken as thread in shear, at 0.577 of the yield strength (von Mises); length past one diameter isn't
/// counted, the first turns carry most. Source: Shigley, Mechanical Engineering Design, screws (from memory).
/// </remarks>
public sealed record ThreadedBoss(IsotropicMaterial Material, Length PitchDiameter, Length Engagement) : EndJoint
{
    /// <inheritdoc/>
    public override string Name => "threaded boss";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. Material.Validate()];
        if (new ValidRange<Length>(2.Millimetres(), 500.Millimetres()).Find(PitchDiameter, "pitch diameter of the boss", "Measure the thread.") is { } pitch) findings.Add(pitch);
        if (new ValidRange<Length>(1.Millimetres(), 200.Millimetres()).Find(Engagement, "engagement of the boss", "Three turns at the least.") is { } engagement) findings.Add(engagement);
        return findings;
    }

    internal override string Cause => "thread stripped";

    internal override double FailurePascals(in EndContext context)
    {
        var length = Math.Min(Engagement.Meters, PitchDiameter.Meters);
        var force = 0.5 * Math.PI * PitchDiameter.Meters * length * 0.577 * Material.YieldStrength.Value.Pascals * context.MetalFactor;
        // The seal sits at the thread or at the bore, whichever is wider: the thrust is taken on the wider one.
        var seal = Math.Max(PitchDiameter.Meters, context.Bore);
        return force / (Math.PI / 4 * seal * seal);
    }

    internal override IEnumerable<WorkingStep> Work(EndContext context)
    {
        yield return new WorkingStep(
            "Thread of the boss strips", @"p = \frac{\frac{1}{2}\,\pi\,d_p\,l\;0.577\,\sigma_y}{\pi d^2/4}",
            $"0.5 × π × {PitchDiameter.Show()} × {Length.FromMillimeters(Math.Min(Engagement.Millimeters, PitchDiameter.Millimeters)).Show()} × 0.577 × {Material.YieldStrength.Value.Show()} over the sealed area",
            GaugePressure.FromPascals(FailurePascals(context)).ToString(),
            new Source("Shigley", "Mechanical Engineering Design", null, "screws", SourceKind.FromMemory));
    }
}
