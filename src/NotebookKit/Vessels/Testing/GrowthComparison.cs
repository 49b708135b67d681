using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using UnitsNet;

namespace NotebookKit.Vessels.Testing;

/// <summary>How much a tested vessel grew, beside how much its wall was predicted to: an observation of its stiffness.</summary>
/// <remarks>
/// Never a sign of strength: it raises no rating, and lowers none by itself. Source: growth of a closed tube as
/// <see cref="VesselExpansion"/>; the ends are taken as stiff and the prediction as exact, so that a growth above it by more than the
/// measurement allows is a warning.
/// </remarks>
public sealed record GrowthComparison : Result
{
    private static readonly ModelCard Card = new(
        "Measured beside predicted growth",
        ["The straight part grows, the ends are stiff.", "The prediction is taken as exact: only what the measurement may be off by is "
            + "counted.", "Stiffness says nothing of strength."],
        "Up to the predicted burst of the wall.",
        [VesselSources.TubeGrowth, VesselSources.Jones]);

    internal GrowthComparison(VesselTest test, Volume seen, GaugePressure? at, Volume? predicted) =>
        (Test, Seen, At, Predicted) = (test, seen, at, predicted);

    /// <summary>The test.</summary>
    public VesselTest Test { get; }

    /// <summary>Growth that was measured.</summary>
    public Volume Seen { get; }

    /// <summary>Pressure at which it was measured; none where that isn't known.</summary>
    public GaugePressure? At { get; }

    /// <summary>Growth predicted of the very vessel there; none where the pressure isn't known, or is past the predicted burst.</summary>
    public Volume? Predicted { get; }

    /// <summary>Measured over predicted growth [-]; none without a prediction.</summary>
    public double? Ratio => Predicted is { } predicted ? Seen / predicted : null;

    /// <summary>Whether measured and predicted growth agree; none where that can't be told.</summary>
    public bool? Agrees => Predicted is { } predicted && Test.GrowthUncertainty is { } off
        ? Math.Abs(Seen.Milliliters - predicted.Milliliters) <= off.Milliliters : null;

    /// <summary>Whether it grew by more than predicted and than the measurement allows.</summary>
    public bool IsTooMuch => Agrees == false && Seen > Predicted;

    /// <inheritdoc/>
    public override string Title => $"Growth of {Test.Id}";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Measured growth", Seen.Show(), Test.GrowthUncertainty is { } off ? $"± {off.Show()}" : "uncertainty not given"),
        new("Predicted growth", Predicted?.Show() ?? "none", At is { } at ? $"at {at}" : "pressure not given"),
        new("Measured over predicted", Ratio is { } ratio ? Digits.Round(ratio) : "not known",
            Agrees switch { true => "they agree", false => "they don't agree", null => "can't be told" }),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => [Say()];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Growth beside its prediction", @"\left|\Delta V - \Delta V_{pred}\right| \le u",
            $"{Seen.Show()}, {Predicted?.Show() ?? "no prediction"}, {Test.GrowthUncertainty?.Show() ?? "uncertainty not given"}",
            Lines[^1].Note, VesselSources.TubeGrowth),
    ]);

    private Finding Say()
    {
        if (At is not { } at) return VesselsFindings.GrowthPressureIsNotGiven(Test.Id, Seen);
        if (Predicted is not { } predicted) return VesselsFindings.NoGrowthIsPredicted(Test.Id, at, Seen);
        if (Test.GrowthUncertainty is not { } off)
            return VesselsFindings.GrowthUncertaintyIsNotGiven(Test.Id, at, Seen, predicted, Ratio!.Value);
        return Agrees == true ? VesselsFindings.GrewAsPredicted(Test.Id, at, Seen, off, predicted)
            : IsTooMuch ? VesselsFindings.GrewMoreThanPredicted(Test.Id, at, Seen, off, predicted, Ratio!.Value)
            : VesselsFindings.GrewLessThanPredicted(Test.Id, at, Seen, off, predicted, Ratio!.Value);
    }
}
