using NotebookKit.Clearance;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance;

public class ProofVerbsTests
{
    private static readonly BurstDistribution Bursts = Built.SampleBursts(4000);

    // By hand: logarithms of 100, 120, 144 lie ln 1.2 apart; spread = sqrt(exp(ln²1.2) − 1) = 0.1838472 (Python 3), median 120.
    [Fact]
    public void A_lognormal_law_is_fitted_to_logarithms()
    {
        var fitted = ScreeningByProof.Of([100, 120, 144], 60.BarGauge(), 40.BarGauge());
        Tolerance.Relative(120, fitted.Median.Bar, 1e-12);
        Tolerance.Relative(0.18384724660069107, fitted.Spread, 1e-12);
    }

    [Fact]
    public void The_fit_meets_the_samples_where_there_are_many()
    {
        foreach (var share in new[] { 0.2, 0.5, 0.8 })
            Tolerance.Absolute(share, ScreeningByProof.Of(Bursts, Bursts.Quantile(share), 30.BarGauge()).BurstInProof(), 0.03);
    }

    [Fact]
    public void A_rating_and_a_proved_vessel_show_both_truths()
    {
        var design = Rated.Effect(Bursts);
        Assert.Equal("What the proof does for Trainer vessel and what it costs", design.Title);
        Assert.Equal((Rated.ProofPressure, Rated.WorkingPressure), (design.Input.Screening.Proof, design.Input.Screening.Fill));
        Assert.Contains(design.Lines, l => l.Name == "Screening by the proof");
        Assert.Contains(design.Lines, l => l.Name == "Life used up by the proof"
            && l.Value.Contains("not known", StringComparison.Ordinal));
        Assert.Null(design.ChanceAfterProof);

        var proved = TheProved.Effect(Bursts, 80.Percent());
        Assert.Contains("Trainer vessel T-1", proved.Title, StringComparison.Ordinal);
        Assert.Equal((TheProved.Held, TheProved.Allowed), (proved.Input.Screening.Proof, proved.Input.Screening.Fill));
        Assert.True(proved.ChanceAfterProof <= proved.ChanceWithoutProof);
    }

    [Fact]
    public void Bursts_of_another_design_are_refused() =>
        Assert.Contains("those of another design", Assert.Throws<InvalidDesignException>(() => Pair.BoosterRating.Effect(Bursts)).Message,
            StringComparison.Ordinal);
}
