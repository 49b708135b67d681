using CsCheck;
using MathNet.Numerics.Distributions;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Testing;

public class VesselEvidenceTests
{
    private static readonly PressureVessel Vessel = Samples.ShortChamber;

    [Fact]
    public void The_prior_is_the_fabrication_s_own_range()
    {
        var prior = EfficiencyBelief.Of(Fabrication.HandLaid);
        Tolerance.Absolute(45, prior.Quantile(0.05).Percent, 0.1);
        Tolerance.Absolute(60, prior.Quantile(0.50).Percent, 0.1);
        Tolerance.Absolute(80, prior.Quantile(0.95).Percent, 0.2);
        Tolerance.Absolute(1, prior.Density.Values.Zip(prior.Efficiency.Values.Skip(1).Zip(prior.Efficiency.Values, (b, a) => b - a),
            (d, w) => d * w).Sum(), 0.01);
    }

    [Fact]
    public void Without_a_test_the_belief_is_the_prior_and_a_twin_s_worth_is_told()
    {
        var learned = VesselEvidence.Of().Learn(Vessel);
        Assert.Equal(learned.Prior.Mean, learned.Posterior.Mean);
        Assert.Equal(0, learned.EffectiveBursts, 9);
        Assert.Contains(learned.Findings, f => f.Message.Contains("One short twin burst near", StringComparison.Ordinal));
        Assert.True(learned.AfterTwin.Quantile(0.05) > learned.Prior.Quantile(0.05));
    }

    // Conjugate normal in the logarithm: where the wall's burst goes nearly with a power of the efficiency, the grid's posterior has to
    // come out as the precision-weighted mean. Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, Eq. 2.10 to 2.12.
    [Fact]
    public void One_burst_updates_as_the_conjugate_normal_does()
    {
        var learned = VesselEvidence.Of(new BurstTest(Vessel, "A", 110.BarGauge(), "wall")).Learn(Vessel);
        var prior = learned.Prior;
        var sigma = learned.VesselScatter;
        var mu0 = Math.Log(prior.Quantile(0.5).DecimalFractions);
        // Slope of log burst over log efficiency and the level, from the mean model between two efficiencies.
        double At(double e) => Middle(Vessel with { Fabrication = Vessel.Fabrication
            with { EfficiencyLow = 20.Percent(), Efficiency = (100 * e).Percent(), EfficiencyHigh = 110.Percent() } });
        var slope = (At(0.70) - At(0.60)) / Math.Log(0.70 / 0.60);
        var seen = mu0 + (Math.Log(110e5) - At(0.60)) / slope;
        var (s0, s) = (prior.Spread, sigma / slope);
        var expected = (mu0 / (s0 * s0) + seen / (s * s)) / (1 / (s0 * s0) + 1 / (s * s));
        Tolerance.Absolute(expected, Math.Log(learned.Posterior.Quantile(0.5).DecimalFractions), 0.015);
        Tolerance.Relative(1 / Math.Sqrt(1 / (s0 * s0) + 1 / (s * s)), learned.Posterior.Spread, 0.05);

        static double Middle(PressureVessel vessel)
        {
            var b = vessel.Burst();
            return 0.5 * (Math.Log(b.WallLow.Pascals) + Math.Log(b.WallBurst.Pascals));
        }
    }

    [Fact]
    public void Five_held_proofs_teach_less_than_one_burst_and_it_shows()
    {
        var rating = Vessel.Rate();
        var proofs = VesselEvidence.Of([.. Enumerable.Range(1,
            5).Select(i => new HeldProof(Vessel, $"C{i}", rating.ProofPressure))]).Learn(Vessel);
        var burst = VesselEvidence.Of(new BurstTest(Vessel, "A", Vessel.Burst().WallBurst, "wall")).Learn(Vessel);
        Assert.True(proofs.EffectiveBursts < 0.1 * burst.EffectiveBursts, $"{proofs.EffectiveBursts} against {burst.EffectiveBursts}");
        Assert.InRange(burst.EffectiveBursts, 0.5, 1.6);
        Assert.Contains("of a burst", proofs.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tests_of_one_vessel_are_one_witness()
    {
        var once = VesselEvidence.Of(new HeldProof(Vessel, "C1", 70.BarGauge())).Learn(Vessel);
        var often = VesselEvidence.Of(new HeldProof(Vessel, "C1", 70.BarGauge()), new HeldProof(Vessel, "c1", 60.BarGauge()),
            new HeldProof(Vessel, "C1", 70.BarGauge())).Learn(Vessel);
        Assert.Equal(once.Posterior.Mean, often.Posterior.Mean);
        Assert.Single(often.Tests);
    }

    [Fact]
    public void A_burst_at_an_end_tells_only_that_the_wall_held()
    {
        var end = VesselEvidence.Of(new BurstTest(Vessel, "C1", 70.BarGauge(), "nozzle end, sleeve carried over")).Learn(Vessel);
        var held = VesselEvidence.Of(new HeldProof(Vessel, "C1", 70.BarGauge())).Learn(Vessel);
        Assert.Equal(held.Posterior.Mean, end.Posterior.Mean);
    }

    [Fact]
    public void The_chance_of_holding_falls_with_the_pressure_held_and_rises_with_the_efficiency() =>
        Gen.Select(Gen.Double[1, 150], Gen.Double[0.1, 50], Gen.Double[-1.8, 0.2], Gen.Double[0.001, 0.3]).Sample(
            (pressure, more, logEfficiency, step) =>
            {
                Assert.True(Held(pressure + more, logEfficiency) <= Held(pressure, logEfficiency));
                Assert.True(Held(pressure, logEfficiency + step) >= Held(pressure, logEfficiency) - 1e-12);
            },
            iter: 300);

    [Fact]
    public void A_higher_held_proof_never_lowers_the_belief()
    {
        var before = 0.0;
        foreach (var bar in new[] { 20, 40, 60, 80, 100 })
        {
            var mean = VesselEvidence.Of(new HeldProof(Vessel, "C1", bar.BarGauge())).Learn(Vessel).Posterior.Mean.Percent;
            Assert.True(mean >= before);
            before = mean;
        }
    }

    [Fact]
    public void A_burst_far_below_what_was_believed_is_called_out()
    {
        var learned = VesselEvidence.Of(new BurstTest(Vessel, "A", 35.BarGauge(), "wall")).Learn(Vessel);
        Assert.Contains(learned.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("outside what was believed", StringComparison.Ordinal));
    }

    [Fact]
    public void Bursts_raise_the_B_basis_by_narrowing_the_belief()
    {
        var learned = VesselEvidence.Of(new BurstTest(Vessel, "A", 100.BarGauge(), "wall"),
            new BurstTest(Vessel, "B", 95.BarGauge(), "wall")).Learn(Vessel);
        Assert.True(Vessel.SampleBursts(4000, belief: learned.Posterior).BBasis > Vessel.SampleBursts(4000).BBasis);
    }

    [Fact]
    public void Impossible_evidence_is_refused_with_every_reason()
    {
        var evidence = VesselEvidence.Of(
            new BurstTest(Vessel, "A", 100.BarGauge(), "wall"), new BurstTest(Vessel, "a", 90.BarGauge(), "wall"),
            new HeldProof(Vessel, "B", 1400.BarGauge()), new BurstTest(Vessel, "C", 80.BarGauge(), "wall"),
                new HeldProof(Vessel, "C", 85.BarGauge()));
        var error = Assert.Throws<InvalidDesignException>(() => evidence.Learn(Vessel));
        Assert.Contains("a vessel bursts once", error.Message, StringComparison.Ordinal);
        Assert.Contains("was psi read as bar?", error.Message, StringComparison.Ordinal);
        Assert.Contains("held a proof above that", error.Message, StringComparison.Ordinal);
    }

    private static readonly Dictionary<PressureVessel, EfficiencyLearning.WallModel> Models = [];

    private static double Held(double bar, double logEfficiency)
    {
        lock (Models) return EfficiencyLearning.LogLikelihood(logEfficiency, [new HeldProof(Vessel, "x", bar.BarGauge())], Models);
    }

    // The likelihood of a held proof by its definition: 1 − Φ.
    [Fact]
    public void The_likelihood_of_a_held_proof_is_its_survival_probability()
    {
        lock (Models)
        {
            var logEfficiency = Math.Log(0.6);
            var value = EfficiencyLearning.LogLikelihood(logEfficiency, [new HeldProof(Vessel, "x", 80.BarGauge())], Models);
            var model = Models[Vessel];
            Tolerance.Relative(1 - Normal.CDF(model.LogMedian(logEfficiency), model.Sigma, Math.Log(80e5)), Math.Exp(value), 1e-9);
        }
    }
}
