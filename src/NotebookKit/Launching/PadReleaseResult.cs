using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>Loads on clamp and latches, force and time of the release, and the first push.</summary>
/// <remarks>Source: as <see cref="PadRelease"/>.</remarks>
public sealed record PadReleaseResult : Result
{
    internal PadReleaseResult(PadRelease release, IReadOnlyList<Finding> findings)
    {
        Release = release;
        Findings = [.. findings, .. Say()];
    }

    /// <summary>What was computed.</summary>
    public PadRelease Release { get; }

    /// <summary>Thrust on the vehicle while the seal holds, p A.</summary>
    public Force SealedThrust => N(Release.Pressure.Pascals * AreaM2);

    /// <summary>Thrust of the open jet of water, 2 p A, which the latches have to hold where the seal goes first.</summary>
    public Force OpenThrust => SealedThrust * 2;

    /// <summary>What all latches carry together while the seal holds; below 0 where the weight is the larger.</summary>
    public Force Held => SealedThrust - Weight;

    /// <summary>What the most loaded latch carries in the worst case: the seal gone, the latches still shut.</summary>
    public Force WorstLatch => N(Math.Max(0, (OpenThrust - Weight).Newtons) * Share);

    /// <summary>Force that it takes to pull all latches open while the seal holds.</summary>
    public Force ReleaseForce => N(Math.Max(0, Held.Newtons) * Release.LatchFriction);

    /// <summary>Force that it takes to pull all latches open once the seal has gone and the jet pulls on them.</summary>
    public Force ReleaseForceOpen => N(Math.Max(0, (OpenThrust - Weight).Newtons) * Release.LatchFriction);

    /// <summary>Time that the latches take with the pull that is given; none where none is given or it doesn't do.</summary>
    public Duration? ReleaseTime => Release.Pull is { } pull && pull > ReleaseForce
        ? Duration.FromSeconds(Math.Sqrt(2 * Release.Travel.Meters * Release.MovedMass.Kilograms / (pull - ReleaseForce).Newtons)) : null;

    /// <summary>Friction of the seal on the launch tube, μ p π d w; 0 without a tube.</summary>
    public Force TubeFriction => Release.TubeStroke is null ? Force.Zero : N(Release.SealFriction * Release.Pressure.Pascals * Math.PI
        * Release.SealDiameter.Meters * Release.SealWidth.Meters);

    /// <summary>Force that starts the vehicle once the latches are open.</summary>
    public Force FirstPush => Release.TubeStroke is null ? OpenThrust - Weight : SealedThrust - TubeFriction - Weight;

    /// <summary>Acceleration at the start; below 0 where the vehicle stays.</summary>
    public Acceleration FirstAcceleration =>
        Acceleration.FromMetersPerSecondSquared(FirstPush.Newtons / Release.Mass.Kilograms);

    /// <summary>Shortest time on the launch tube, at the full pressure all the way; none without a tube or where the vehicle
    /// stays.</summary>
    public Duration? TubeTime => Release.TubeStroke is { } stroke && FirstPush > Force.Zero
        ? Duration.FromSeconds(Math.Sqrt(2 * stroke.Meters / FirstAcceleration.MetersPerSecondSquared)) : null;

    /// <inheritdoc/>
    public override string Title => $"Release at {Release.Pressure}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Loads at rest and first push",
        ["Sealed: p A; open: 2 p A of a jet of water without losses, which errs high.",
            "Latches open square to the load and against its friction; the pull is constant.",
            "Seal friction by the pressure on its contact; the squeeze of fitting isn't counted: measure it with an empty vessel."],
        "A vehicle at rest on the pad.", [LaunchingSources.Momentum, LaunchingSources.Friction,
            Source.CommonPractice("uneven share, friction coefficients, masses and ways of latches and seals")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Thrust while the seal holds", SealedThrust.Show(), $"weight {Weight.Show()}"),
        new("Thrust with the throat open", OpenThrust.Show(), "if the seal goes before the latches"),
        new("Most loaded latch, worst case", WorstLatch.Show(), Release.LatchRating is { } rated ? $"rated to {rated.Show()}"
            : "rating not given"),
        new("Force to open the latches", ReleaseForce.Show(), Release.Pull is { } pull ? $"{pull.Show()} at hand" : "pull not given"),
        new("The same with the seal gone", ReleaseForceOpen.Show(), "a release that sticks until the jet has set in"),
        .. ReleaseTime is { } time ? [new ResultLine("Time to open", $"{Digits.Round(1000 * time.Seconds)} ms")]
            : Array.Empty<ResultLine>(),
        .. Release.TubeStroke is null ? Array.Empty<ResultLine>() : [new ResultLine("Seal friction on the tube", TubeFriction.Show()),
            new ResultLine("Time on the tube, at the least", TubeTime is { } t ? $"{Digits.Round(1000 * t.Seconds)} ms"
                : "the vehicle stays")],
        new("Acceleration at the start", $"{Digits.Round(FirstAcceleration.MetersPerSecondSquared)} m/s²"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Thrust while the seal holds", @"F = p\,\frac{\pi}{4}\,d^2", $"{Release.Pressure} × π/4 × ({Release.SealDiameter.Show()})²",
            SealedThrust.Show(), LaunchingSources.Momentum),
        new("Most loaded latch", @"F_1 = u\,\frac{2\,p\,A - m\,g}{n}", $"{Digits.Round(Release.Uneven)} × ({OpenThrust.Show()} − "
            + $"{Weight.Show()}) / "
            + $"{Release.Latches}", WorstLatch.Show(), LaunchingSources.Momentum),
    ]);

    private double AreaM2 => Math.PI / 4 * Release.SealDiameter.Meters * Release.SealDiameter.Meters;

    private Force Weight => N(Release.Mass.Kilograms * StandardConstants.Gravity);

    private double Share => Math.Min(1, Release.Uneven / Release.Latches);

    private static Force N(double newtons) => Force.FromNewtons(newtons);

    private IEnumerable<Finding> Say()
    {
        if (Release.LatchRating is not { } rated) yield return LaunchingFindings.LatchRatingNotGiven(WorstLatch);
        else if (rated < WorstLatch) yield return LaunchingFindings.LatchTooWeak(rated, WorstLatch);
        if (Release.Pull is { } pull && pull < ReleaseForce) yield return LaunchingFindings.PullTooSmall(pull, ReleaseForce);
        else if (Release.Pull is { } some && some < ReleaseForceOpen)
            yield return LaunchingFindings.PullTooSmallForJet(some, ReleaseForceOpen);
        if (FirstPush <= Force.Zero) yield return LaunchingFindings.VehicleStays(SealedThrust);
    }
}
