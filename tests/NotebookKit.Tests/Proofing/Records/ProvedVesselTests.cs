using NotebookKit.Provenance;
using NotebookKit.Quantities;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Proofing.Records;

public class ProvedVesselTests
{
    // By hand: 1.5 x 1.05 = 1.575 between fill and proof; the gauge's 0.1 bar is taken off what was held.
    [Fact]
    public void What_the_proof_allows_is_what_was_held_over_the_ratings_factor()
    {
        var working = Rated.WorkingPressure.Bar;
        Tolerance.Relative((working * 1.575) + 0.4 - 0.1, TheProved.Held.Bar, 1e-9);
        Tolerance.Relative(TheProved.Held.Bar / 1.575, TheProved.ByProof.Bar, 1e-12);
        Assert.Equal(Rated.WorkingPressure, TheProved.Allowed);
    }

    [Fact]
    public void A_rating_by_risk_proves_a_vessel_where_its_chance_is_low_and_tested()
    {
        var twins = Vessels.Samples.Twins(Built);
        var rating = Built.Rate(RuleSet.ByRisk(1e-3), evidence: twins);
        Assert.True(rating.Risk.Chance <= 1e-3);
        Assert.Equal(rating.WorkingPressure, Recorded(rating, "T-1").ToProvedVessel(rating).Allowed);
    }

    [Fact]
    public void A_rating_by_risk_proves_nothing_where_its_chance_is_higher_or_untested_or_its_proof_is_less()
    {
        // Plates so thick that their yield caps no rating; twins that scatter widely leave a high chance.
        var vessel = Built with { NozzleEnd = Thick(Built.NozzleEnd), ForwardEnd = Thick(Built.ForwardEnd) };
        var twins = Vessels.Samples.Twins(vessel);
        Rating[] ratings = [vessel.Rate(RuleSet.ByRisk(0.1), evidence: Scattered(vessel)),
            vessel.Rate(RuleSet.ByRisk(1e-4)), vessel.Rate(RuleSet.ByRisk(1e-3) with { Proof = 1.25 }, evidence: twins)];
        Assert.InRange(ratings[0].Risk.Chance, 1.01e-3, 1);
        foreach (var rating in ratings)
            Assert.Contains("rates by risk", Assert.Throws<InvalidDesignException>(() =>
                Recorded(rating, "T-1").ToProvedVessel(rating)).Message, StringComparison.Ordinal);
    }

    private static VesselEvidence Scattered(PressureVessel vessel) => new([.. new[] { 0.5, 1.0, 1.5 }.Select((share, i) =>
        new BurstTest(vessel, $"twin {i + 1}", vessel.Burst().WallLow * share, BurstTest.Wall))]);

    private static VesselEnd Thick(VesselEnd end) =>
        end with { Closure = new FlatClosure(end.Closure.Material, 30.Millimetres()) { Opening = end.Closure.Opening } };

    [Fact]
    public void A_vessel_that_gave_way_in_a_test_is_not_proved_by_another_day_s_record()
    {
        var rating = Built.Rate(RuleSets.Club, 34.BarGauge(), Vessels.Samples.Twins(Built));
        Assert.Contains("a vessel that gave way is not filled again", Assert.Throws<InvalidDesignException>(() =>
            Recorded(rating, " Twin 2").ToProvedVessel(rating)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_proof_held_lower_allows_less_than_the_rating()
    {
        var low = Recorded(Rated, "T-1", plan: p => p with { WorkingPressure = 25.BarGauge() }).ToProvedVessel(Rated);
        Assert.Equal(low.ByProof, low.Allowed);
        Assert.True(low.Allowed < Rated.WorkingPressure);
    }

    // The plan's own factor was 1.1; the rating asks 1.575.
    [Fact]
    public void A_plan_with_a_smaller_factor_proves_by_the_ratings_factor_all_the_same()
    {
        var small = Recorded(Rated, "T-1", plan: p => p with { Rule = p.Rule with { Factor = 1.1 } }).ToProvedVessel(Rated);
        Tolerance.Relative(small.Held.Bar / 1.575, small.Allowed.Bar, 1e-12);
        Assert.True(small.Allowed.Bar < 0.75 * Rated.WorkingPressure.Bar);
    }

    // Girth, length and the water pumped, as the vessel's own growth makes them; no burette was read.
    [Theory]
    [InlineData(0.01, true)]
    [InlineData(0.5, false)]
    public void A_proof_read_by_tape_proves_a_vessel_where_it_leaves_no_doubt(double withinMillimetres, bool isProved)
    {
        var proof = NotebookKit.Proofing.Plans.Proof.For(Rated);
        var top = (proof.ProofPressure.Bar + 0.4).BarGauge();
        var strain = Built.Expansion(proof.ProofPressure).Strain;
        double more = top / proof.ProofPressure, around = more * strain.Hoop.DecimalFractions, along = more * strain.Axial.DecimalFractions;
        var record = (Logged(proof, "T-1", ProofDay) with
        {
            Expansion = null,
            Tape = new TapeReadings
            {
                Girths = [.. Enumerable.Range(1, 4).Select(i => Stretch($"station {i}", 220, around))],
                Lengths = [Stretch("along", 850, along)],
                GirthWithin = withinMillimetres.Millimetres(),
                LengthWithin = withinMillimetres.Millimetres(),
                WaterPumped = proof.Filled.WaterToPump(top).ReadWithin(0.5.Millilitres()),
            },
        }).Judge();
        Assert.Equal(isProved ? ProofVerdict.Accept : ProofVerdict.Retest, record.Verdict);
        if (!isProved)
        {
            Assert.Throws<InvalidDesignException>(() => record.ToProvedVessel(Rated));
            return;
        }

        var proved = record.ToProvedVessel(Rated);
        Assert.Equal(TheProved.Held, proved.Held);
        Assert.Equal(TheProved.Allowed, proved.Allowed);
        Assert.NotEqual(TheProved.Fingerprint, proved.Fingerprint);

        static StretchReading Stretch(string station, double before, double strain) => new(station, before.Millimetres(),
            (before * (1 + strain)).Millimetres(), (before * (1 + 0.005 * strain)).Millimetres());
    }

    [Fact]
    public void Its_chamber_is_proved_until_something_of_it_is_changed()
    {
        var chamber = TheProved.Chamber;
        Assert.Equal(PressureBasis.Proved, chamber.Basis);
        Assert.Contains("T-1", chamber.RestsOn, StringComparison.Ordinal);
        Assert.Equal(PressureBasis.Stated, (chamber with { RatedPressure = chamber.RatedPressure }).Basis);
        Assert.Equal(PressureBasis.Stated, (chamber with { Bore = 60.Millimetres() }).Basis);
        Assert.Equal(PressureBasis.Predicted, Built.ToChamber(Rated).Basis);
        Assert.Equal(PressureBasis.Stated, new Chamber(1.Litres(), 60.Millimetres(), 10.BarGauge()).Basis);
    }

    [Fact]
    public void A_record_comes_back_from_its_file_with_the_same_verdict_and_fingerprint()
    {
        var back = ProofRecord.FromJson(Accepted.ToJson());
        Assert.Equal(Accepted.Fingerprint, back.Fingerprint);
        Assert.Equal(Accepted.Verdict, back.Verdict);
        Assert.Equal(Accepted.ToJson(), back.ToJson());
        Assert.Equal(TheProved, back.ToProvedVessel(Rated));
    }

    [Fact]
    public void Every_single_reading_is_in_the_fingerprint()
    {
        var readings = Accepted.Readings;
        for (var i = 0; i < readings.Pressure.Count; i += 97)
        {
            var values = readings.Pressure.Values.ToArray();
            values[i] += 0.001;
            Assert.NotEqual(Accepted.Fingerprint, (readings with {
                Pressure = readings.Pressure with { Values = values } }).Judge().Fingerprint);
        }
    }
}
