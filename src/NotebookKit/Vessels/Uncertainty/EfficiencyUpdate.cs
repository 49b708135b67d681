using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Testing;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>What tests taught of the fabrication efficiency, beside what was believed before.</summary>
/// <param name="Vessel">The design in hand.</param>
/// <param name="Tests">Tests used: of each vessel its burst, or the highest proof it held.</param>
/// <param name="Prior">What was believed before.</param>
/// <param name="Posterior">What is believed now.</param>
/// <param name="Surprise">How likely the least expected burst was before the tests, both tails [-]; 1 without a burst.</param>
/// <param name="EffectiveBursts">How many bursts would have taught as much [-].</param>
/// <param name="VesselScatter">Scatter of bursts at a known efficiency, in the logarithm [-].</param>
/// <param name="TwinBurst">Where a twin burst next would be expected to burst.</param>
/// <param name="AfterTwin">What would be believed after a twin burst just there.</param>
/// <remarks>Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, ch. 3 (grid posterior), §8.7 (censored data).</remarks>
public sealed record EfficiencyUpdate(
    PressureVessel Vessel, IReadOnlyList<VesselTest> Tests, EfficiencyBelief Prior, EfficiencyBelief Posterior, double Surprise,
        double EffectiveBursts,
    double VesselScatter, GaugePressure TwinBurst, EfficiencyBelief AfterTwin) : Result
{
    private static readonly Source Text = new("Gelman et al.", "Bayesian Data Analysis, 3rd ed.", 2013, "ch. 3, §8.7");

    /// <summary>How many walls burst.</summary>
    public int Bursts => Tests.Count(t => t is BurstTest { IsOfWall: true });

    /// <summary>How many vessels only held: proofs, and bursts at an end.</summary>
    public int Held => Tests.Count - Bursts;

    /// <inheritdoc/>
    public override string Title => $"Fabrication efficiency by tests, {Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Bayesian update of the fabrication efficiency on a grid",
        [
            "All vessels were made by the same hands in the same way.",
            $"At a given efficiency bursts scatter by {Digits.Round(100 * VesselScatter, 2)} % about the prediction.",
            "A held proof, or a burst at an end, tells only that the wall bursts above.",
            "Of one vessel only one test counts: its burst, or the highest proof it held.",
        ],
        "Efficiencies of 15 to 130 %.",
        [Text]);

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Before", Prior.ToString(), Prior.Name),
        new("Now", Posterior.ToString(), Posterior.Name),
        new("Equivalent number of bursts", EffectiveBursts < 0.005 ? "none" : Digits.Round(EffectiveBursts, 2),
            $"walls burst {Bursts}, vessels that held {Held}"),
        new("A twin would burst near", TwinBurst.ToString(),
            $"low end of the efficiency then {AfterTwin.Quantile(0.05).Show(2)} instead of {Posterior.Quantile(0.05).Show(2)}"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            var gain = AfterTwin.Quantile(0.05) / Posterior.Quantile(0.05);
            if (Bursts == 0)
            {
                findings.Add(VesselsFindings.WorthOfTests(
                    Held, EffectiveBursts, TwinBurst, Posterior.Quantile(0.05), AfterTwin.Quantile(0.05), 100 * (gain - 1)));
            }
            else if (Surprise < 0.05)
            {
                findings.Add(VesselsFindings.TestsContradictBelief(100 * Surprise));
            }

            if (Bursts == 1) findings.Add(VesselsFindings.OneBurstSetsLevelOnly());
            // No rating here that could be refused.
            findings.AddRange(EvidenceCheck.Find(Vessel, Tests).Select(f => f with { Severity = FindingSeverity.Warning }));
            findings.Add(VesselsFindings.EfficiencyIsNotRatedOn());
            findings.AddRange(Vessel.OwnValues);
            return findings;
        }
    }

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Chance of a burst at b", @"L(\eta) = \frac{1}{\sigma}\,\varphi\left(\frac{\ln b-\ln \hat p(\eta)}{\sigma}\right)",
            string.Join(", ", Tests.Where(t => t is BurstTest { IsOfWall: true }).Select(t => $"{t.Id} {t.Pressure}")),
            $"σ = {Digits.Round(VesselScatter)}", Text),
        new("Chance of holding p", @"L(\eta) = 1-\Phi\left(\frac{\ln p-\ln \hat p(\eta)}{\sigma}\right)",
            string.Join(", ", Tests.Where(t => t is not BurstTest { IsOfWall: true }).Select(t => $"{t.Id} {t.Pressure}")),
            $"σ = {Digits.Round(VesselScatter)}", Text),
        new("Belief now", @"\pi(\eta\,|\,\text{tests}) \propto \pi(\eta)\prod L_i(\eta)", Prior.ToString(), Posterior.ToString(), Text),
        new("Effective number of bursts", @"n = \sigma^2\left(\frac{1}{s_1^2}-\frac{1}{s_0^2}\right)",
            $"{Digits.Round(VesselScatter)}² × (1/{Digits.Round(Posterior.Spread)}² − 1/{Digits.Round(Prior.Spread)}²)",
            Digits.Round(EffectiveBursts), Text),
    ]);
}
