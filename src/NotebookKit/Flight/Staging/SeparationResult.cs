using NotebookKit.Flight.Design;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Staging;

/// <summary>Whether drag parts two coasting stages. Source: two bodies with one deceleration, H. Goldstein, Classical Mechanics
/// (unverified).</summary>
public sealed record SeparationResult : StatedResult
{
    /// <summary>Deceleration of the sustainer alone by drag.</summary>
    public required Acceleration SustainerDeceleration { get; init; }

    /// <summary>Deceleration of the booster alone by drag.</summary>
    public required Acceleration BoosterDeceleration { get; init; }

    /// <summary>Force in the joint while they hold together; above zero presses them together, below zero pulls them apart.</summary>
    public required Force JointForce { get; init; }

    /// <summary>Time to slide out of the joint by drag alone; none where drag presses together.</summary>
    public required Duration? TimeToClear { get; init; }

    /// <summary>Whether drag separates them.</summary>
    public bool Parts => JointForce < Force.Zero;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Drag separation",
        ["Both stages coast; no friction or pressure in the joint.", "Drag constant during separation."],
        "Subsonic coasting stacks.",
        [MassLiterature.Goldstein]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Force in the joint", JointForce.Show(), Parts ? "pulls apart" : "presses together"),
        new("Sustainer slows by", SustainerDeceleration.Show(AccelerationUnit.MeterPerSecondSquared)),
        new("Booster slows by", BoosterDeceleration.Show(AccelerationUnit.MeterPerSecondSquared)),
        new("Time to clear", TimeToClear is { } time ? time.Show(DurationUnit.Millisecond) : "stays on"),
    ];
}
