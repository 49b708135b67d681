using CsCheck;
using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Clearance.Service;

public sealed class ServiceStatusTests : IDisposable
{
    private readonly SampleRecord sample = new();

    public static TheoryData<string, ServiceEvent> Mishaps => new()
    {
        { "Hard landing", new LandedHard() },
        { "Drop", new Dropped(0.8.Metres()) },
        { "Heat", new Heated(63.Celsius(), 2.Hours()) },
        { "Heat", SampleRecord.Filled("2026-05-10", celsius: 55) },
        { "Repair", new Repaired("boss rebonded") },
        { "Failed inspection", new Inspected(InspectionResult.NotSound) },
        { "Filled above its proof", SampleRecord.Filled("2026-05-10", 36.1) },
    };

    public void Dispose() => sample.Dispose();

    [Fact]
    public void A_vessel_that_was_made_proved_and_inspected_is_in_service()
    {
        var status = sample.Used().With(new Inspected(InspectionResult.Sound) { At = At("2026-05-20") }).Status("2026-05-20");
        Assert.Equal(ServiceStanding.InService, status.Standing);
        Assert.Empty(status.Reasons);
        Assert.Empty(status.Findings);
        Assert.False(status.InspectionDue);
        Assert.Equal((2, 2, 3, 48), (status.Fills, status.FillsSinceProof, status.Pressurisations, status.FillsLeft));
        Tolerance.Relative(240, status.TimeAtPressure.Seconds, 1e-12);
        Tolerance.Relative(20 * 3600 - 240, status.TimeLeft!.Value.Seconds, 1e-12);
        Tolerance.Relative(36e5, status.AllowedPressure!.Value.Pascals, 1e-12);
        Assert.Equal((Day("2027-03-02"), Day("2029-02-20")), (status.ProofDue, status.LifeEnds));
        Assert.All(status.Lines, line => Assert.NotEqual("", line.Value));
        Assert.Equal("4 min, 19.9 h left", status.Lines.Single(l => l.Name == "Time at pressure").Value);
    }

    [Fact]
    public void Nothing_is_taken_for_granted()
    {
        var status = sample.Status("2026-05-20");
        Assert.Equal(ServiceStanding.Grounded, status.Standing);
        Assert.Equal(["Not made", "Not proved"], status.Reasons.Select(r => r.Rule));
        Assert.Null(status.AllowedPressure);
        Assert.Null(status.ProofDue);
        Assert.Null(status.LifeEnds);
        Assert.Equal(["Not proved"], sample.With(SampleRecord.Made()).Status("2026-05-20").Reasons.Select(r => r.Rule));
    }

    [Fact]
    public void A_proof_alone_does_not_say_how_old_a_vessel_is() =>
        Assert.Equal(["Not made"], sample.With(SampleRecord.Proved("2026-03-02")).Status("2026-05-20").Reasons.Select(r => r.Rule));

    [Theory]
    [MemberData(nameof(Mishaps))]
    public void A_mishap_grounds_the_vessel_until_it_is_proved_again(string rule, ServiceEvent mishap)
    {
        sample.Used().With(mishap with { At = At("2026-05-10") });
        var reason = Assert.Single(sample.Status("2026-05-20").Reasons);
        Assert.Equal(rule, reason.Rule);
        Assert.StartsWith("Line 9 of 2026-05-10: ", reason.Sentence, StringComparison.Ordinal);
        Assert.EndsWith("before it is filled.", reason.Sentence, StringComparison.Ordinal);

        // A proof that was done before the mishap and written down after it proves nothing.
        sample.With(SampleRecord.Proved("2026-05-09", writtenOn: "2026-05-11"));
        Assert.Equal(ServiceStanding.Grounded, sample.Status("2026-05-20").Standing);
        sample.With(SampleRecord.Proved("2026-05-12"));
        if (rule == "Failed inspection")
        {
            Assert.EndsWith("; inspect it before it is filled.", Assert.Single(sample.Status("2026-05-20").Reasons).Sentence,
                StringComparison.Ordinal);
            sample.With(new Inspected(InspectionResult.Sound) { At = At("2026-05-12") });
        }

        Assert.Equal(ServiceStanding.InService, sample.Status("2026-05-20").Standing);
    }

    [Fact]
    public void An_inspection_clears_only_what_the_limits_say_it_clears()
    {
        var inspection = new LifeFigure<Recheck>(Recheck.Inspection, Source.CommonPractice("test"));
        sample.Used().With(new Dropped(0.1.Metres()) { At = At("2026-05-10") },
            new Inspected(InspectionResult.Sound) { At = At("2026-05-10") });
        Assert.Equal(ServiceStanding.Grounded, sample.Status("2026-05-20").Standing);
        Assert.Equal(ServiceStanding.InService, sample.Status("2026-05-20", LifeLimits.Club with { AfterDrop = inspection }).Standing);
        sample.With(new LandedHard { At = At("2026-05-11") });
        Assert.Equal("Hard landing", Assert.Single(sample.Status("2026-05-20",
            LifeLimits.Club with { AfterDrop = inspection }).Reasons).Rule);
    }

    [Fact]
    public void Warmth_below_the_limit_grounds_nothing_and_any_heat_does_where_there_is_no_limit()
    {
        sample.Used().With(new Heated(50.Celsius(), 2.Hours()) { At = At("2026-05-10") });
        Assert.Equal(ServiceStanding.InService, sample.Status("2026-05-20").Standing);
        Assert.Equal("Heat", Assert.Single(sample.Status("2026-05-20", LifeLimits.Club with { HotAbove = null }).Reasons).Rule);
    }

    [Fact]
    public void A_lower_proof_allows_less()
    {
        sample.Used().With(SampleRecord.Proved("2026-05-12", 45), SampleRecord.Filled("2026-05-13", 31));
        var reason = Assert.Single(sample.Status("2026-05-20").Reasons);
        Assert.Contains("31 bar gauge, above the 30 bar gauge that the proof of 2026-05-12 allows", reason.Sentence,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_fill_before_any_proof_is_cleared_by_a_proof_after_it()
    {
        sample.With(SampleRecord.Made(), SampleRecord.Filled("2026-03-03", 5));
        Assert.Equal(["Not proved", "Filled without a proof"], sample.Status("2026-05-20").Reasons.Select(r => r.Rule));
        sample.With(SampleRecord.Proved("2026-03-04"));
        Assert.Equal(ServiceStanding.InService, sample.Status("2026-05-20").Standing);
    }

    [Fact]
    public void A_fill_on_the_day_a_proof_was_written_down_late_counts_against_it()
    {
        sample.With(SampleRecord.Made(), SampleRecord.Filled("2026-03-10"), SampleRecord.Proved("2026-03-02", writtenOn: "2026-03-12"));
        var status = sample.Status("2026-05-20");
        Assert.Equal(1, status.FillsSinceProof);
        Assert.Equal(ServiceStanding.InService, status.Standing);
    }

    [Fact]
    public void A_fill_while_grounded_is_said()
    {
        sample.Used().With(new LandedHard { At = At("2026-05-10") }, SampleRecord.Filled("2026-05-11"), SampleRecord.Proved("2026-05-12"));
        Assert.Contains(sample.Status("2026-05-20").Findings,
            f => f.Message.Contains("filled while it was grounded", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2027-03-02", null)]
    [InlineData("2027-03-03", "Proof overdue")]
    public void A_proof_is_good_to_the_day_it_is_due(string on, string? rule) =>
        Assert.Equal(rule is null ? [] : [rule], sample.Used().Status(on).Reasons.Select(r => r.Rule));

    [Fact]
    public void The_last_day_of_its_life_is_in_it()
    {
        sample.Clock.Now = At("2029-01-02");
        sample.Used().With(SampleRecord.Proved("2029-01-01"));
        Assert.Equal(ServiceStanding.InService, sample.Status("2029-02-20").Standing);
        Assert.Equal("Over age", Assert.Single(sample.Status("2029-02-21").Reasons).Rule);
    }

    [Fact]
    public void Fills_and_time_are_counted_to_their_limits()
    {
        ServiceEvent[] start = [SampleRecord.Made(), SampleRecord.Proved("2026-03-02")];
        string? Rule(int fills, double minutes, int proofs) => SampleRecord.Of(
                [.. start, .. Enumerable.Repeat(SampleRecord.Filled("2026-04-01", minutes: minutes), fills),
                    .. Enumerable.Repeat(SampleRecord.Proved("2026-04-02"), proofs)])
            .StatusOn(Day("2026-04-03"), LifeLimits.Club).Reasons.Select(r => r.Rule).SingleOrDefault();

        Assert.Null(Rule(49, 2, 0));
        Assert.Equal("Fills between proofs", Rule(50, 2, 0));
        Assert.Null(Rule(50, 2, 1));
        Assert.Null(Rule(97, 2, 1));
        Assert.Equal("Pressurisations in all", Rule(98, 2, 1));
        Assert.Null(Rule(40, 29.9, 0));
        Assert.Equal("Time at pressure", Rule(40, 30, 0));
    }

    [Fact]
    public void A_retired_vessel_stays_retired_whatever_follows()
    {
        sample.Used().With(new Retired("doubt") { At = At("2026-05-10") }, SampleRecord.Proved("2026-05-11"),
            new Inspected(InspectionResult.Sound) { At = At("2026-05-12") });
        var status = sample.Status("2026-05-12");
        Assert.Equal(ServiceStanding.Retired, status.Standing);
        Assert.Equal("Retired", Assert.Single(status.Reasons).Rule);
    }

    [Fact]
    public void A_day_before_the_last_event_is_no_day_to_fill() =>
        Assert.Equal("Day", Assert.Single(sample.Used().Status("2026-05-08").Reasons).Rule);

    [Fact]
    public void A_proof_of_a_vessel_that_was_not_made_yet_counts_for_nothing()
    {
        sample.With(SampleRecord.Made("2026-02-20"), SampleRecord.Proved("2026-01-10", writtenOn: "2026-03-01"));
        Assert.Equal(["Not proved", "Proof before the vessel was made"], sample.Status("2026-05-20").Reasons.Select(r => r.Rule));
    }

    [Fact]
    public void An_inspection_is_due_on_every_day_of_use_and_one_that_found_a_fault_is_none()
    {
        sample.Used();
        Assert.True(sample.Status("2026-05-09").InspectionDue);
        Assert.Contains(sample.Status("2026-05-20").Findings,
            f => f.Message.Contains("No inspection of 2026-05-20", StringComparison.Ordinal));
        sample.With(new Inspected(InspectionResult.Sound) { At = At("2026-05-20") });
        Assert.False(sample.Status("2026-05-20").InspectionDue);
        Assert.True(sample.Status("2026-05-21").InspectionDue);
        sample.With(new Inspected(InspectionResult.NotSound) { At = At("2026-05-20") });
        Assert.True(sample.Status("2026-05-20").InspectionDue);
    }

    [Fact]
    public void No_event_but_a_proof_or_an_inspection_brings_a_grounded_vessel_back() =>
        Gen.Int[0, 6].List[0, 12].Sample(picks =>
        {
            ServiceEvent[] harmless =
            [
                SampleRecord.Filled("2026-05-11"), new Flown("8"), new Weighed(411.Grams()), new LandedHard(), new Dropped(1.Metres()),
                    new Repaired("x"), new Heated(60.Celsius(), 1.Hours()),
            ];
            var events = new ServiceEvent[] { SampleRecord.Made(), SampleRecord.Proved("2026-03-02"),
                new LandedHard { At = At("2026-05-10") } }
                .Concat(picks.Select(p => harmless[p] with { At = At("2026-05-11") }));
            return SampleRecord.Of(events).StatusOn(Day("2026-05-20"), LifeLimits.Club).Standing == ServiceStanding.Grounded;
        }, iter: 300);

    [Fact]
    public void Limits_that_make_no_sense_are_refused()
    {
        var practice = Source.CommonPractice("test");
        var record = sample.Used().Read();
        foreach (var limits in new[]
        {
            LifeLimits.Club with { FillsBetweenProofs = new(0, practice) }, LifeLimits.Club with { MonthsOfLife = new(-1, practice) },
                LifeLimits.Club with { TimeAtPressure = new(0.Hours(), practice) },
            LifeLimits.Club with { HotAbove = new(500.Celsius(), practice) },
                LifeLimits.Club with { AfterDrop = new((Recheck)9, practice) },
        })
            Assert.Throws<InvalidDesignException>(() => record.StatusOn(Day("2026-05-20"), limits));
        Assert.All(LifeLimits.All, l => Assert.Empty(l.Validate()));
    }

    private static DateTimeOffset At(string day) => SampleRecord.Time(day);

    private static DateOnly Day(string day) => SampleRecord.Day(day);
}
