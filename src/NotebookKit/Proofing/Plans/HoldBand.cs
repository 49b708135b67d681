using NotebookKit.Quantities;

namespace NotebookKit.Proofing.Plans;

/// <summary>By how much a reading may be off the planned pressure and still count as the planned hold. Common practice, no
/// source.</summary>
internal static class HoldBand
{
    private const double LeastBar = 0.5, ShareUp = 0.025, ShareDown = 0.10, GaugeErrors = 4;

    /// <summary>The band either way [bar].</summary>
    /// <param name="plannedBar">Planned pressure [bar gauge].</param>
    /// <param name="isAfterProof">Whether the hold comes after the proof: a leak shows at any pressure near the working one.</param>
    /// <param name="gaugeErrorBar">Error of the gauge [bar].</param>
    public static double Bar(double plannedBar, bool isAfterProof, double gaugeErrorBar) =>
        Math.Max(Math.Max(LeastBar, (isAfterProof ? ShareDown : ShareUp) * plannedBar), GaugeErrors * gaugeErrorBar);

    /// <summary>The same in a sentence, for the sheet.</summary>
    public static string Sentence(ProofPlan plan)
    {
        var last = plan.Steps[^1].Pressure;
        var (proof, after) = (Bar(plan.ProofPressure.Bar, false, 0), Bar(last.Bar, true, 0));
        return $"A reading counts for a step where it is off the planned pressure by no more than {Digits.Round(100 * ShareUp)} %, or "
            + $"{Digits.Round(LeastBar)} bar where that is more: at proof {Digits.Round(proof)} bar; after the proof by "
            + $"{Digits.Round(100 * ShareDown)} %, at {last} {Digits.Round(after)} bar. With a gauge that may be off by more than a "
            + $"quarter of that, {Digits.Round(GaugeErrors)} times its error (common practice, no source).";
    }
}
