using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>Loads of the stage latch and of the sustainer's seal.</summary>
/// <remarks>Source: as <see cref="StageJoint"/>.</remarks>
public sealed record StageJointResult : Result
{
    private const double WaterDensity = 1000;

    internal StageJointResult(StageJoint joint, IReadOnlyList<Finding> findings)
    {
        Joint = joint;
        Findings = Boosted < Force.Zero ? [.. findings, LaunchingFindings.LatchUnloadedWhileBoosted(Boosted)] : findings;
    }

    /// <summary>What was computed.</summary>
    public StageJoint Joint { get; }

    /// <summary>What the latch carries on the pad; below 0 where the weight presses the stages together.</summary>
    public Force OnThePad => Latch(StandardConstants.Gravity, 0);

    /// <summary>What it carries at the largest acceleration; below 0 where the boost presses the stages together.</summary>
    public Force Boosted => Latch(Joint.Boost.MetersPerSecondSquared + StandardConstants.Gravity, 0);

    /// <summary>What it carries when the booster is spent and drag slows the stack.</summary>
    public Force Coasting => Latch(-Joint.StackDrag.Newtons / Joint.SpentStackMass.Kilograms, Joint.SustainerShare
        * Joint.StackDrag.Newtons);

    /// <summary>The most that it carries in any of the three.</summary>
    public Force MostLatch => Force.FromNewtons(new[] { OnThePad, Boosted, Coasting }.Max(f => f.Newtons));

    /// <summary>The most that the seal holds: the sustainer's pressure and the head of its water while boosted.</summary>
    public GaugePressure MostSeal => Seal(Joint.Boost.MetersPerSecondSquared + StandardConstants.Gravity);

    /// <inheritdoc/>
    public override string Title => "Joint of the stages";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Forces along the axis of a rigid stack",
        ["The seal's area is the same for both stages; the space between the stages is open to the air.",
            "No bending: a stack in a cross wind loads latch and seal unevenly."],
        "From the pad to separation.", [LaunchingSources.Momentum]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Latch on the pad", OnThePad.Show()), new("Latch at the largest acceleration", Boosted.Show()),
        new("Latch when the booster is spent", Coasting.Show()), new("Latch, the most of the three", MostLatch.Show()),
        new("Seal, at the most", MostSeal.ToString(), "sustainer's pressure and the head of its water"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Latch", @"F = p\,A - m\,(a + g) - D", $"{Joint.Sustainer} on {Joint.SealDiameter.Show()}, {Joint.SustainerMass.Show()}",
            MostLatch.Show(),
            LaunchingSources.Momentum),
    ]);

    private GaugePressure Seal(double felt) =>
        GaugePressure.FromPascals(Joint.Sustainer.Pascals + (WaterDensity * Joint.WaterHeight.Meters * Math.Max(0, felt)));

    private Force Latch(double felt, double drag) => Force.FromNewtons((Seal(felt).Pascals * Math.PI / 4 * Joint.SealDiameter.Meters
        * Joint.SealDiameter.Meters) - (Joint.SustainerMass.Kilograms * felt) - drag);
}
