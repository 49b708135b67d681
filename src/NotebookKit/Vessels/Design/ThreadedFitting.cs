using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A fitting screwed into the closure or into a boss of it.</summary>
/// <param name="Material">What the fitting is made of.</param>
/// <param name="Nominal">Nominal diameter of the thread; 2 to 300 mm, at least the opening.</param>
/// <param name="Pitch">Pitch of the thread; 0.3 to 8 mm.</param>
/// <param name="Engagement">Length over which full threads engage; 1 to 200 mm.</param>
public sealed record ThreadedFitting(IsotropicMaterial Material, Length Nominal, Length Pitch, Length Engagement) : Fitting
{
    /// <summary>Outer diameter of a boss around the thread; none where the closure's wall alone is there. Above the thread's.</summary>
    public Length? Boss { get; init; }

    /// <inheritdoc/>
    public override string Name => "threaded fitting";

    /// <summary>Length of thread that there is metal for: without a boss no more than the closure's wall.</summary>
    internal Length EngagedIn(Closure closure) => Boss is null ? UnitMath.Min(Engagement, closure.Wall) : Engagement;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Closure closure)
    {
        List<Finding> findings = [.. base.Validate(closure), .. Material.Validate()];
        Add(findings,
            new ValidRange<Length>(UnitMath.Max(2.Millimetres(), closure.Opening), 300.Millimetres())
                .Find(Nominal, "diameter of the fitting's thread", "A thread narrower than the opening doesn't fill it."),
            new ValidRange<Length>(0.3.Millimetres(), 8.Millimetres()).Find(Pitch, "pitch of the fitting's thread",
                "Measure over ten turns."),
            new ValidRange<Length>(1.Millimetres(), 200.Millimetres()).Find(Engagement, "engagement of the fitting",
                "Threads that don't engage hold nothing; engage three turns at the least."),
            Boss is { } boss ? new ValidRange<Length>(Nominal, 500.Millimetres()).Find(boss, "outer diameter of the boss",
                "A boss needs a wall around the thread.") : null);
        var engaged = EngagedIn(closure);
        if (engaged < Engagement) findings.Add(VesselsFindings.EngagementPastWall(Engagement, closure.Wall));
        if (findings.All(f => f.Severity != FindingSeverity.Error) && engaged < Pitch * 3)
            findings.Add(VesselsFindings.FewerThanThreeTurnsEngage(engaged / Pitch));
        return findings;
    }
}
