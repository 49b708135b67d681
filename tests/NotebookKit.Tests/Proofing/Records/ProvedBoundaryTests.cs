using NotebookKit.Provenance;
using NotebookKit.Quantities;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Proofing.Records;

/// <summary>Every figure by which a proof makes a proved vessel, tried just on either side of it.</summary>
public class ProvedBoundaryTests
{
    private static string Against(ProofRecord record, Rating? rating = null)
    {
        try
        {
            record.ToProvedVessel(rating ?? Rated);
            return "";
        }
        catch (InvalidDesignException refused)
        {
            return refused.Message;
        }
    }

    private static string Planned(Func<Proof, Proof> plan) => Against(Recorded(Rated, "T-1", plan: plan));

    [Theory]
    [InlineData(60, false)]
    [InlineData(59, true)]
    public void A_proof_is_held_for_a_minute(double seconds, bool isRefused) =>
        Said(isRefused, "the proof was held for 59 s; at least 60 s is required", Planned(p => p with { ProofHold = seconds.Seconds() }));

    [Theory]
    [InlineData(300, false)]
    [InlineData(299, true)]
    public void Leaks_are_looked_for_during_five_minutes(double seconds, bool isRefused) =>
        Said(isRefused, "leaks were looked for during", Planned(p => p with { LeakHold = seconds.Seconds() }));

    [Theory]
    [InlineData(1.0049, false)]
    [InlineData(1.0051, true)]
    [InlineData(0.9951, false)]
    [InlineData(0.9949, true)]
    public void The_volume_proved_is_that_of_the_rating_within_half_a_per_cent(double share, bool isRefused) =>
        Said(isRefused, "they must agree within 0.5 %", Planned(p => p with { Volume = p.Volume * share }));

    [Theory]
    [InlineData(1.0999, false)]
    [InlineData(1.1001, true)]
    [InlineData(0.9001, false)]
    [InlineData(0.8999, true)]
    public void The_wall_proved_grows_as_that_of_the_rating_within_a_tenth(double share, bool isRefused) =>
        Said(isRefused, "the proof was planned for a wall that grows", Planned(p => p with
        {
            Wall = p.Wall with { VolumeRatio = p.Wall.VolumeRatio * share },
        }));

    [Theory]
    [InlineData(5, false)]
    [InlineData(5.001, true)]
    public void No_more_than_five_per_cent_of_the_growth_may_stay(double percent, bool isRefused) =>
        Said(isRefused, "the limit of permanent expansion was set to", Planned(p => p with
        {
            Rule = p.Rule with { PermanentLimit = percent.Percent() },
        }));

    [Theory]
    [InlineData(1, false)]
    [InlineData(1.001, true)]
    public void No_leak_of_more_than_one_per_cent_in_ten_minutes_is_accepted(double percent, bool isRefused) =>
        Said(isRefused, "the limit of the leak was set to", Against((Accepted.Readings with { LeakLimit = percent.Percent() }).Judge()));

    // One reading a second; nine or ten in the middle of the hold are left out.
    [Theory]
    [InlineData(9, false)]
    [InlineData(10, true)]
    public void No_two_readings_of_the_hold_are_more_than_ten_seconds_apart(int leftOut, bool isRefused)
    {
        var readings = Accepted.Readings;
        var hold = Accepted.ProofHold!;
        var middle = (hold.From + (0.5 * hold.Held)).Seconds;
        bool[] kept = [.. readings.Time.Values.Select(t => t <= middle || t > middle + leftOut)];
        Series Kept(Series series) => series with { Values = [.. series.Values.Where((_, i) => kept[i])] };
        Said(isRefused, "during the proof hold 11 s pass between two readings; at most 10 s may", Against((readings with
        {
            Time = Kept(readings.Time), Pressure = Kept(readings.Pressure), Temperature = Kept(readings.Temperature!),
            Expansion = Kept(readings.Expansion!),
        }).Judge()));
    }

    // Plates so thick that their yield caps no rating; twins that scatter, so that the chance sets the pressure and not the factor.
    [Theory]
    [InlineData(0.99e-3, false)]
    [InlineData(1.02e-3, true)]
    public void A_vessel_rated_by_risk_is_proved_at_one_burst_in_a_thousand_fills(double chance, bool isRefused)
    {
        var vessel = Built with { NozzleEnd = Thick(Built.NozzleEnd), ForwardEnd = Thick(Built.ForwardEnd) };
        var twins = new VesselEvidence([.. new[] { 0.5, 1.0, 1.5 }.Select((share, i) => new BurstTest(vessel, $"twin {i + 1}",
            vessel.Burst().WallLow * share, BurstTest.Wall))]);
        var rating = vessel.Rate(RuleSet.ByRisk(chance), evidence: twins);
        Tolerance.Relative(chance, rating.Risk.Chance, 5e-3);
        Said(isRefused, "rates by risk", Against(Recorded(rating, "T-1"), rating));
    }

    private static VesselEnd Thick(VesselEnd end) =>
        end with { Closure = new FlatClosure(end.Closure.Material, 30.Millimetres()) { Opening = end.Closure.Opening } };

    private static void Said(bool isRefused, string sentence, string message)
    {
        if (isRefused) Assert.Contains(sentence, message, StringComparison.Ordinal);
        else Assert.Equal("", message);
    }
}
