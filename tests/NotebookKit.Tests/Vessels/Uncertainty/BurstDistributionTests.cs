using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Uncertainty;

public class BurstDistributionTests
{
    // A vessel in balance and weakest in its wall, so that the burst goes with the efficiency.
    private static readonly PressureVessel Balanced = Samples.ShortChamber with
    {
        Liner = new Liner(Samples.Stock.Solid("PVC-U"), 54.Millimetres(), 1.5.Millimetres()),
        ForwardEnd = Samples.Trainer.ForwardEnd with { Closure = Samples.Trainer.ForwardEnd.Closure with { Wall = 4.Millimetres() } },
    };

    [Fact]
    public void The_same_seed_gives_the_same_bursts_on_any_number_of_threads()
    {
        var one = Balanced.SampleBursts(3000, seed: 7, threads: 1);
        var many = Balanced.SampleBursts(3000, seed: 7, threads: 4);
        Assert.Equal(one.Bursts.Values, many.Bursts.Values);
        Assert.Equal(one.BBasis, many.BBasis);
        Assert.NotEqual(one.Bursts.Values, Balanced.SampleBursts(3000, seed: 8).Bursts.Values);
    }

    [Fact]
    public void Without_any_scatter_every_vessel_bursts_where_the_prediction_says()
    {
        var sure = Balanced with
        {
            Fabrication = Balanced.Fabrication with
            {
                EfficiencyLow = 60.Percent(), EfficiencyHigh = 60.Percent(), VesselSpread = 0, FibreFractionSpread = 0.Percent(),
                    AngleSpread = 0.Degrees(),
            },
        };
        var distribution = sure.SampleBursts(2000);
        // What is left: fibre 5 %, yarn and yield: the middle is the prediction's.
        Tolerance.Relative(sure.Burst().Burst.Bar, distribution.Quantile(0.5).Bar, 0.02);
        Assert.InRange(distribution.Spread, 0.02, 0.07);
    }

    [Fact]
    public void Basis_values_lie_below_the_mean_in_order()
    {
        var d = Balanced.SampleBursts(4000);
        Assert.True(d.ABasis < d.BBasis);
        Assert.True(d.BBasis < d.Quantile(0.10));
        Assert.True(d.Quantile(0.10) < d.Mean);
        // Unknown efficiency of 17.5 % in the logarithm dominates.
        Assert.Equal("fabrication efficiency, not known", d.Drivers[0].Name);
        Assert.InRange(d.Spread, 0.15, 0.25);
    }

    [Fact]
    public void A_chance_without_a_failure_is_bounded_and_not_called_zero()
    {
        var chance = Balanced.SampleBursts(3000).ChanceBelow(5.BarGauge());
        Assert.Equal(0, chance.Failed);
        // Rule of three: 1 − 0.05^(1/n).
        Tolerance.Relative(1 - Math.Pow(0.05, 1.0 / 3000), chance.AtMost, 1e-6);
        Assert.StartsWith("fewer than 1 in", chance.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_chance_below_a_quantile_is_its_share()
    {
        var d = Balanced.SampleBursts(5000);
        Tolerance.Absolute(0.25, d.ChanceBelow(d.Quantile(0.25)).Estimate, 1e-3);
        Assert.True(d.ChanceBelow(d.Quantile(0.25)).AtMost > 0.25);
    }

    // One rating: the heap is a view of what is drawn, and no other figure is offered beside the rating's.
    [Fact]
    public void The_distribution_rates_nothing_and_says_so()
    {
        Assert.DoesNotContain(typeof(BurstDistribution).GetMethods(), m => m.ReturnType == typeof(Rating));
        Assert.Contains(Balanced.SampleBursts(400).Lines, l => l.Note.Contains("no rating rests on it", StringComparison.Ordinal));
    }

    [Fact]
    public void A_weak_bond_takes_over_as_the_weakest_part()
    {
        var glued = Balanced with
        {
            ForwardEnd = Balanced.ForwardEnd with
            {
                Joints = [new BondedPlug(Samples.Stock.Adhesive("structural epoxy"), 30.Millimetres(),
                    NotebookKit.Materials.Solids.BondSurface.AbradedPlastic, NotebookKit.Materials.Solids.BondSurface.AbradedMetal)],
            },
        };
        var d = glued.SampleBursts(3000);
        Assert.Equal("forward end, bonded plug", d.WeakestParts[0].Part);
        Assert.Equal("forward bond", d.Drivers[0].Name);
    }

    [Fact]
    public void Too_few_samples_are_refused()
    {
        var error = Assert.Throws<OutOfRangeException>(() => Balanced.SampleBursts(10));
        Assert.Contains("number of samples is 10", error.Message, StringComparison.Ordinal);
    }

    // Common practice, no source: a 50 mm-class short chamber with one light carbon sleeve and a veil, well made, holds a water test at 86
    // bar.
    // The model's mean has to lie above, its B-basis needn't. "Well made" isn't counted: the chamber is at the default efficiency.
    [Fact]
    public void A_short_chamber_with_one_light_sleeve_is_expected_to_hold_86_bar()
    {
        var d = Samples.ShortChamber.SampleBursts();
        Assert.True(d.Mean > 86.BarGauge(), d.Mean.ToString());
        Assert.True(d.BBasis < 86.BarGauge(), d.BBasis.ToString());
    }
}
