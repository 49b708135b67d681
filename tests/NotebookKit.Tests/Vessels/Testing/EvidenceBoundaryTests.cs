using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Testing;

/// <summary>Every figure by which tests are judged, tried just on either side of it.</summary>
public class EvidenceBoundaryTests
{
    private const double Hair = 1e-7;

    private static readonly PressureVessel Vessel = Samples.ShortChamber;
    private static readonly BurstPrediction Middle = Vessel.Burst();
    private static readonly BurstPrediction Poor = At(f => f.EfficiencyLow);
    private static readonly BurstPrediction Good = At(f => f.EfficiencyHigh);
    private static readonly PartMargin End = Middle.Parts.Skip(1).MinBy(p => p.Burst.Pascals)!;

    private static BurstPrediction At(Func<Fabrication, Ratio> efficiency) =>
        (Vessel with { Fabrication = Vessel.Fabrication with { Efficiency = efficiency(Vessel.Fabrication) } }).Burst();

    private static string Said(VesselTest test, PressureVessel? inHand = null) =>
        string.Join(" ", EvidenceCheck.Find(inHand ?? Vessel, [test]).Select(f => f.ToString()));

    private static BurstTest WallAt(GaugePressure pressure) => new(Vessel, "A", pressure, BurstTest.Wall);

    private static BurstTest EndAt(GaugePressure pressure) => new(Vessel, "A", pressure, End.Name);

    [Fact]
    public void An_end_of_another_design_bears_the_model_out_from_nine_tenths_of_its_prediction()
    {
        var other = Vessel with
        {
            NozzleEnd = Vessel.NozzleEnd with { Closure = Vessel.NozzleEnd.Closure with { Wall = 15.Millimetres() } },
            ForwardEnd = Vessel.ForwardEnd with { Closure = Vessel.ForwardEnd.Closure with { Wall = 4.Millimetres() } },
        };
        Assert.Contains("has other ends", Said(EndAt(End.Burst * (0.9 - Hair)), other), StringComparison.Ordinal);
        Assert.DoesNotContain("has other ends", Said(EndAt(End.Burst * (0.9 + Hair)), other), StringComparison.Ordinal);
        // An end of its own design is held to the whole of its prediction.
        Assert.Contains("the model of the ends is contradicted", Said(EndAt(End.Burst * (1 - Hair))), StringComparison.Ordinal);
        Assert.DoesNotContain("contradicted", Said(EndAt(End.Burst)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wall_is_held_to_the_low_end_of_its_prediction()
    {
        Assert.Contains("below the low end of its prediction", Said(WallAt(Poor.WallLow * (1 - Hair))), StringComparison.Ordinal);
        Assert.Equal("", Said(WallAt(Poor.WallLow)));
    }

    [Fact]
    public void What_is_above_all_predicted_is_a_warning_and_over_twice_that_an_error()
    {
        var all = GaugePressure.FromPascals(Good.Parts.Max(p => p.Burst.Pascals));
        Assert.Equal("", Said(WallAt(Good.WallBurst)));
        Assert.StartsWith("warning: Vessel A burst only at", Said(WallAt(Good.WallBurst * (1 + Hair))), StringComparison.Ordinal);
        Assert.StartsWith("warning: Vessel A burst only at", Said(WallAt(all * 2)), StringComparison.Ordinal);
        Assert.StartsWith("error: Vessel A burst only at", Said(WallAt(all * (2 + Hair))), StringComparison.Ordinal);
        Assert.Equal("", Said(new HeldProof(Vessel, "A", Good.Burst)));
        Assert.StartsWith("warning: Vessel A held", Said(new HeldProof(Vessel, "A", Good.Burst * (1 + Hair))), StringComparison.Ordinal);
    }

    // Half a tenth of a millimetre is the reading of a calliper, not another vessel.
    [Theory]
    [InlineData(0.0499, false)]
    [InlineData(0.0501, true)]
    public void A_liner_is_another_from_half_a_tenth_of_a_millimetre_on(double millimetres, bool isOther)
    {
        var twin = Vessel with { Liner = Vessel.Liner with { Wall = Vessel.Liner.Wall + millimetres.Millimetres() } };
        Assert.Equal(isOther, Said(new HeldProof(twin, "A", 20.BarGauge())).Contains("is of another layup", StringComparison.Ordinal));
    }

    [Fact]
    public void A_leak_counts_below_the_proof_and_a_burst_up_to_it()
    {
        var leaked = new HeldProof(Vessel, "A", 40.BarGauge()) { Leak = new LeakSeen("nozzle end, seal", 30.BarGauge()) };
        Assert.Single(EvidenceCheck.FindLeaks([leaked], (30 + Hair).BarGauge()));
        Assert.Empty(EvidenceCheck.FindLeaks([leaked], 30.BarGauge()));
        foreach (var burst in new[] { WallAt(30.BarGauge()), EndAt(30.BarGauge()) })
        {
            Assert.Single(EvidenceCheck.FindProof(Vessel, [burst], 30.BarGauge()));
            Assert.Empty(EvidenceCheck.FindProof(Vessel, [burst], (30 - Hair).BarGauge()));
        }
    }

    [Theory]
    [InlineData(0.49, false)]
    [InlineData(0.5, true)]
    [InlineData(1000, true)]
    [InlineData(1001, false)]
    public void Pressures_of_tests_go_from_half_a_bar_to_a_thousand(double bar, bool isTaken) =>
        Assert.Equal(isTaken, VesselEvidence.Of(new HeldProof(Vessel, "A", bar.BarGauge())).Validate().Count == 0);

    [Theory]
    [InlineData(0.0099, false)]
    [InlineData(0.01, true)]
    [InlineData(1000, true)]
    [InlineData(1001, false)]
    public void Drops_go_from_one_in_a_hundred_minutes_to_a_thousand_a_minute(double drops, bool isTaken) =>
        Assert.Equal(isTaken, VesselEvidence.Of(new HeldProof(Vessel, "A", 40.BarGauge())
        {
            Leak = new LeakSeen("seal", 40.BarGauge()) { DropsPerMinute = drops },
        }).Validate().Count == 0);

    [Theory]
    [InlineData(0.999, true)]
    [InlineData(1.001, false)]
    public void A_part_predicted_past_five_thousand_bar_is_left_out(double share, bool isIn)
    {
        const string name = "forward end, plate collapse";
        var thickness = Bisect(10, 100, t => With(t).Parts.Single(p => p.Name == name).Burst.Bar - share * 5000);
        var prediction = With(thickness);
        Assert.Equal(isIn, prediction.PredictedParts().Any(p => p.Name == name));

        static BurstPrediction With(double millimetres) => (Samples.Trainer with
        {
            ForwardEnd = new VesselEnd(new FlatClosure(Samples.Stock.Solid("aluminium 6061-T6"), millimetres.Millimetres()), Samples.Tied),
        }).Burst();
    }

    [Theory]
    [InlineData(0.49, false)]
    [InlineData(0.5, true)]
    [InlineData(1000, true)]
    [InlineData(1001, false)]
    public void A_proof_is_among_the_usual_tests_where_it_can_be_one(double bar, bool isIn) =>
        Assert.Equal(isIn, UsualTests.Of(Middle, VesselEvidence.Of().LearnParts(Vessel), bar.BarGauge()).Any(o => o.Proof is not null));

    // The success-run theorem: ten that held show 1 − 0.05^(1/10) = 0.25887 at 95 %.
    [Theory]
    [InlineData(0.2588, true)]
    [InlineData(0.2589, false)]
    public void A_chance_rests_on_the_model_below_what_the_tests_show(double chance, bool restsOnModel)
    {
        Assert.Equal(restsOnModel, new FillRisk(30.BarGauge(), chance, 10, 0).RestsOnModel);
        Assert.True(new FillRisk(30.BarGauge(), chance, 10, 1).RestsOnModel);
        Assert.True(new FillRisk(30.BarGauge(), chance, 0, 0).RestsOnModel);
    }

    [Fact, Trait("Length", "long")]
    public void A_burst_less_likely_than_one_in_twenty_contradicts_what_was_believed_of_the_making()
    {
        var at = Bisect(20, 100, bar => Learned(bar).Surprise - 0.05);
        Assert.Contains(Learned(at * 0.999).Findings, IsContradiction);
        Assert.DoesNotContain(Learned(at * 1.001).Findings, IsContradiction);

        EfficiencyUpdate Learned(double bar) => VesselEvidence.Of(WallAt(bar.BarGauge())).Learn(Vessel);

        static bool IsContradiction(Finding f) => f.Message.Contains("outside what was believed", StringComparison.Ordinal);
    }

    internal static double Bisect(double low, double high, Func<double, double> rising)
    {
        Assert.True(rising(low) < 0 && rising(high) > 0);
        for (var i = 0; i < 22; i++)
        {
            var middle = (low + high) / 2;
            if (rising(middle) < 0) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
