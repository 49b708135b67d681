using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Testing;

/// <summary>What a growth measured in a test says of the wall, and what it never does.</summary>
public class GrowthTests
{
    // No ply: a plain aluminium tube, whose growth is known in closed form.
    private static readonly PressureVessel Tube = Samples.Trainer with
    {
        Liner = new Liner(Samples.Stock.Solid("aluminium 6061-T6"), 60.Millimetres(), 2.Millimetres()),
        Length = 500.Millimetres(),
        Plies = [],
        NozzleEnd = Screwed(),
        ForwardEnd = Screwed(),
    };

    private static VesselEnd Screwed() => new(DomedClosure.Hemisphere(Samples.Stock.Solid("aluminium 6061-T6"), 3.Millimetres(),
        60.Millimetres()), new ThreadedBoss(Samples.Stock.Solid("aluminium 6061-T6"), 60.Millimetres(), 30.Millimetres()));

    // ε_h = p·R/(E·t)·(1 − ν/2), ε_a = p·R/(E·t)·(½ − ν) with R = 31 mm, t = 2 mm, E = 68.9 GPa, ν = 0.33: at 4 MPa
    // 4·31/(68 900·2) = 0.899855e-3, so 0.751379e-3 around and 0.152975e-3 along; 2ε_h + ε_a = 1.655733e-3 and with the squares 1.656528e-3
    // of π/4·60²·500 mm³ = 1 413 717 mm³: 2.34186 mL.
    [Fact]
    public void A_tube_grows_by_hand()
    {
        var growth = Held(2.4, 0.1).GrowthBesidePrediction()!;
        Tolerance.Relative(2.34186, growth.Predicted!.Value.Milliliters, 1e-5);
        Tolerance.Relative(2.4 / 2.34186, growth.Ratio!.Value, 1e-5);
        Assert.Equal(40, growth.At!.Value.Bar, 9);
    }

    // 2.34186 mL predicted, ± 0.1 mL: agreement ends at 2.24186 and 2.44186 mL.
    [Theory]
    [InlineData(2.2418, false, FindingSeverity.Note, "stiffer than described")]
    [InlineData(2.2419, true, FindingSeverity.Note, "agrees with")]
    [InlineData(2.4418, true, FindingSeverity.Note, "agrees with")]
    [InlineData(2.4419, false, FindingSeverity.Warning, "not the layup described, or it is damaged")]
    public void Agreement_ends_where_the_measurement_does(double millilitres, bool agrees, FindingSeverity severity, string words)
    {
        var test = Held(millilitres, 0.1);
        var growth = test.GrowthBesidePrediction()!;
        Assert.Equal(agrees, growth.Agrees);
        var finding = Assert.Single(growth.Findings);
        Assert.Equal(severity, finding.Severity);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.Contains(finding, Tube.Rate(evidence: VesselEvidence.Of(test)).Findings);
    }

    [Fact]
    public void No_growth_raises_or_lowers_a_rating_by_itself()
    {
        var silent = Tube.Rate(evidence: VesselEvidence.Of(Held(null, null)));
        foreach (var millilitres in new[] { 0.5, 2.34, 9 })
        {
            var rating = Tube.Rate(evidence: VesselEvidence.Of(Held(millilitres, 0.1)));
            Assert.Equal((silent.IsRated, silent.DesignBurst), (rating.IsRated, rating.DesignBurst));
        }
    }

    [Fact]
    public void What_is_not_given_contradicts_nothing()
    {
        var unsure = Held(9, null).GrowthBesidePrediction()!;
        Assert.Null(unsure.Agrees);
        Assert.Contains("how far the reading may be off is not given", Assert.Single(unsure.Findings).Message, StringComparison.Ordinal);
        var burst = new BurstTest(Tube, "A", 60.BarGauge(), BurstTest.Wall)
        {
            Growth = 9.Millilitres(), GrowthUncertainty = 1.Millilitres(),
        };
        var unread = burst.GrowthBesidePrediction()!;
        Assert.Null(unread.Predicted);
        Assert.Contains("at what pressure is not given", Assert.Single(unread.Findings).Message, StringComparison.Ordinal);
        var read = (burst with { GrowthPressure = 40.BarGauge() }).GrowthBesidePrediction()!;
        Tolerance.Relative(2.34186, read.Predicted!.Value.Milliliters, 1e-5);
        Assert.True(read.IsTooMuch);
        Assert.Null(Held(null, null).GrowthBesidePrediction());
    }

    // The wall's prediction ends at its burst: just below there is a growth, at it none.
    [Fact]
    public void Past_the_predicted_burst_no_growth_is_predicted()
    {
        var burst = Tube.Burst().WallBurst;
        Assert.NotNull((Held(9, 1) with { Pressure = burst * 0.999 }).GrowthBesidePrediction()!.Predicted);
        var past = (Held(9, 1) with { Pressure = burst }).GrowthBesidePrediction()!;
        Assert.Null(past.Predicted);
        Assert.Contains("predicted to have burst", Assert.Single(past.Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Growths_out_of_range_are_refused_in_one_sentence()
    {
        Refused(Held(9, 1) with { GrowthPressure = 40.1.BarGauge() }, "was read at 40.1 bar gauge, and the test went from 0 bar gauge to "
            + "40");
        Refused(Held(9, 1) with { GrowthPressure = 0.BarGauge() }, "was read at 0 bar gauge");
        Refused(Held(null, 1), "and no growth; give the growth");
        Refused(Held(9, 0.0005), "uncertainty of the growth of A is");
        Refused(Held(0.0005, 1), "growth of A is");
        Assert.Empty(VesselEvidence.Of(Held(0.001, 0.001) with { GrowthPressure = 40.BarGauge() }).Validate());

        static void Refused(VesselTest test, string words) => Assert.Contains(words, Assert.Throws<InvalidDesignException>(
            () => test.GrowthBesidePrediction()).Message, StringComparison.OrdinalIgnoreCase);
    }

    private static HeldProof Held(double? millilitres, double? off) => new(Tube, "A", 40.BarGauge())
    {
        Growth = millilitres is { } grown ? Volume.FromMilliliters(grown) : null,
        GrowthUncertainty = off is { } unsure ? Volume.FromMilliliters(unsure) : null,
    };
}
