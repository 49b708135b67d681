using NotebookKit.Quantities;
using NotebookKit.Vessels.Allowables;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

/// <summary>A fibre stands for a part: 1 bar for 0.01 GPa, 1 mm³ for 1 mm of length.</summary>
public class PartEvidencePublishedTests
{
    private const string Fibres = "Bader and Priest, ICCM-IV, 1982, p. 1129: carbon filaments of 10, 20 and 50 mm, fitted by "
        + "maximum likelihood";

    // Sixty-nine values leave little of a prior: the maximum-likelihood fit has to come out, within the prior's last pull and the grid (2
    // %).
    [Fact]
    [PublishedCase("E55", Fibres)]
    public void Many_bursts_of_one_size_give_the_maximum_likelihood_fit()
    {
        var learned = Learn(Filaments.TwentyMillimetres, 20, 20);
        var fit = WeibullFit.Of(Filaments.TwentyMillimetres);
        Tolerance.Relative(100 * fit.Quantile(0.5), learned.Parts[0].Next.Bar, 0.02);
        Tolerance.Relative(Math.PI / Math.Sqrt(6) / fit.Shape, learned.Parts[0].Scatter, 0.06);
        Assert.True(learned.BBasis.Bar < 100 * fit.Quantile(0.10));
        Assert.True(learned.BBasis.Bar > 82 * fit.Quantile(0.10));
    }

    // The real fall of strength with length is less than the whole Weibull effect: a bound for the longer from the shorter is low, never
    // high.
    [Theory]
    [PublishedCase("E55", Fibres)]
    [InlineData(10, 20)]
    [InlineData(10, 50)]
    [InlineData(20, 50)]
    public void A_bound_for_long_fibres_from_short_ones_is_on_the_safe_side(int tested, int wanted)
    {
        var learned = Learn(Of(tested), tested, wanted);
        Assert.True(learned.BBasis.Bar < 100 * WeibullFit.Of(Of(wanted)).Quantile(0.10), learned.BBasis.ToString());
        Assert.True(learned.BBasis < Learn(Of(tested), tested, tested).BBasis);
    }

    // Posterior summed over 3401 × 800 points by an independent script; 181 × 25 here: 1 %.
    [Theory]
    [PublishedCase("E60", "posterior of Weibull bursts with a lognormal prior of ratio and scatter; grid sum computed independently "
        + "of the library")]
    [InlineData(0, 0.84201, 0.17705, 0.34918, 0.21604, 0.78411, 0.30204)]
    [InlineData(3, 0.85228, 0.15432, 0.52326, 0.32412, 0.84511, 0.44783)]
    [InlineData(4, 0.83951, 0.12900, 0.55629, 0.37317, 0.83986, 0.48864)]
    public void The_posterior_of_few_tests(int tests, double ratio, double scatter, double bBasis, double aBasis, double next,
        double nextLow)
    {
        PredictedPart Wall(double volume) => new("wall", 100.BarGauge()) { Stressed = Volume.FromCubicMillimeters(volume) };
        PartTest[] all =
        [
            new PartBurst("A", 80.BarGauge(), "wall", [Wall(1000)]), new PartBurst("B", 90.BarGauge(), "wall", [Wall(1000)]),
            new PartHeld("C", 60.BarGauge(), [Wall(1000)]), new PartBurst("D", 95.BarGauge(), "wall", [Wall(250)]),
        ];
        var wall = PartEvidence.Of([.. all.Take(tests)]).Learn([Wall(1000)]).Parts[0];
        Tolerance.Relative(ratio, wall.Ratio, 0.01);
        Tolerance.Relative(scatter, wall.Scatter, 0.01);
        Tolerance.Relative(bBasis, wall.BBasis.Bar / 100, 0.01);
        Tolerance.Relative(aBasis, wall.ABasis.Bar / 100, 0.01);
        Tolerance.Relative(next, wall.Next.Bar / 100, 0.01);
        Tolerance.Relative(nextLow, wall.NextLow.Bar / 100, 0.01);
    }

    // Convolved on 3401 × 800 points by an independent script; 1 % as above.
    [Fact]
    [PublishedCase("E60", "posterior of Weibull bursts of three batches whose means differ by 10 %; computed independently of the library")]
    public void The_posterior_with_tests_of_other_batches()
    {
        PredictedPart[] wall = [new("wall", 100.BarGauge())];
        PartBurst Burst(string id, double bar, string batch) => new(id, bar.BarGauge(), "wall", wall) { Batch = batch };
        var learned = PartEvidence.Of(Burst("A", 80, "first"), Burst("B", 90, "first"), Burst("C", 70, "second"),
            Burst("D", 85, "third")).Learn(wall, "third").Parts[0];
        Tolerance.Relative(0.82376, learned.Ratio, 0.01);
        Tolerance.Relative(0.14496, learned.Scatter, 0.01);
        Tolerance.Relative(0.52191, learned.BBasis.Bar / 100, 0.01);
        Tolerance.Relative(0.33724, learned.ABasis.Bar / 100, 0.01);
        Tolerance.Relative(0.81832, learned.Next.Bar / 100, 0.01);
        Tolerance.Relative(0.45156, learned.NextLow.Bar / 100, 0.01);
    }

    // 400 000 draws of an independent script; 4000 here leave about 2 % on a quantile of 5 %.
    [Fact]
    [PublishedCase("E60", "weakest of three Weibull parts under the same prior; simulated independently of the library")]
    public void The_vessel_is_weaker_than_its_weakest_part()
    {
        var learned = PartEvidence.Of().Learn([new("wall", 100.BarGauge()), new("nozzle end", 110.BarGauge()),
            new("forward end", 120.BarGauge())]);
        Tolerance.Relative(31.063, learned.BBasis.Bar, 0.02);
        Tolerance.Relative(17.530, learned.ABasis.Bar, 0.03);
        Assert.True(learned.BBasis < learned.Weakest.BBasis);
    }

    private static double[] Of(int millimetres) =>
        millimetres == 10 ? Filaments.TenMillimetres : millimetres == 20 ? Filaments.TwentyMillimetres : Filaments.FiftyMillimetres;

    private static PartLearning Learn(double[] strengths, double tested, double wanted)
    {
        static PredictedPart Fibre(double length) => new("fibre", 300.BarGauge()) { Stressed = Volume.FromCubicMillimeters(length) };
        return PartEvidence.Of([.. strengths.Select((s, i) => new PartBurst($"{i}", (100 * s).BarGauge(), "fibre",
            [Fibre(tested)]))]).Learn([Fibre(wanted)]);
    }
}
