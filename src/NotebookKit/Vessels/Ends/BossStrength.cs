using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>What the thread of a boss holds.</summary>
/// <remarks>
/// Half of the cylinder π·d·l is taken as thread in shear, at 0.577 of the yield strength (von Mises); length past one diameter isn't
/// counted, the first turns carry most. Source: Shigley, Mechanical Engineering Design, screws (unverified).
/// </remarks>
internal static class BossStrength
{
    public const string Cause = "thread stripped";

    public static double FailurePascals(ThreadedBoss boss, in EndContext context)
    {
        var length = Math.Min(boss.Engagement.Meters, boss.PitchDiameter.Meters);
        var force = 0.5 * Math.PI * boss.PitchDiameter.Meters * length * 0.577 * boss.Material.YieldStrength.Value.Pascals;
        // The seal sits at the thread or at the bore, whichever is wider: the thrust is taken on the wider one.
        var seal = Math.Max(boss.PitchDiameter.Meters, context.Bore);
        return force / (Math.PI / 4 * seal * seal);
    }

    public static IEnumerable<WorkingStep> Work(ThreadedBoss boss, EndContext context)
    {
        var length = Length.FromMillimeters(Math.Min(boss.Engagement.Millimeters, boss.PitchDiameter.Millimeters));
        yield return new WorkingStep(
            "Thread of the boss strips", @"p = \frac{\frac{1}{2}\,\pi\,d_p\,l\;0.577\,\sigma_y}{\pi d^2/4}",
            $"0.5 × π × {boss.PitchDiameter.Show()} × {length.Show()} × 0.577 × {boss.Material.YieldStrength.Value.Show()} over "
                + "the sealed area",
            GaugePressure.FromPascals(FailurePascals(boss, context)).ToString(),
            new Source("Shigley", "Mechanical Engineering Design", null, "screws", SourceKind.Unverified));
    }
}
