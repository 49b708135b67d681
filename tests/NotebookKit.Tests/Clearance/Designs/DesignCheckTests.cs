using NotebookKit.Clearance;
using NotebookKit.Provenance;
using NotebookKit.Tests.DesignFiles;

namespace NotebookKit.Tests.Clearance.Designs;

public class DesignCheckTests
{
    private static readonly DesignCheck Curlew = DesignFixture.Curlew.Check();

    // The rating is of a dry vessel; the card takes a saturated resin where nobody weighed a strip.
    [Fact]
    public void The_check_says_what_the_card_would_allow_where_that_is_less_than_the_fill()
    {
        var line = Assert.Single(Curlew.Lines, l => l.Name == "Curlew: allowed on the flight card");
        Assert.Contains("less than the design's fill of 58 bar gauge: the resin keeps", line.Note, StringComparison.Ordinal);
        Assert.Contains("Measured moisture raises what is allowed.", line.Note, StringComparison.Ordinal);
        var lower = DesignFixture.Curlew.With("fill pressure", "30 bar gauge").Check();
        Assert.DoesNotContain(lower.Lines, l => l.Name == "Curlew: allowed on the flight card");
    }

    [Fact]
    public void Curlew_keeps_all_that_its_design_requires()
    {
        Assert.True(Curlew.Holds, string.Join("\n", Curlew.Findings));
        Assert.Empty(Curlew.LookAgain);
        Assert.Equal(DesignFixture.Curlew.Requirements.Count, Curlew.Outcomes.Count);
        Assert.Contains(Curlew.Lines, l => l.Name == "Curlew: highest allowed fill" && l.Value == "60 bar gauge");
        Assert.Contains(Curlew.Lines, l => l.Name == "Apogee" && l.Value == "446 m");
    }

    [Fact]
    public void Godwit_keeps_all_that_its_design_requires()
    {
        var check = DesignFixture.Godwit.Check();
        Assert.True(check.Holds, string.Join("\n", check.Findings));
        Assert.Contains(check.Lines, l => l.Name == "Godwit sustainer: highest allowed fill");
    }

    [Fact]
    public void A_requirement_that_no_longer_holds_is_named_with_its_decision()
    {
        var check = DesignFixture.Curlew.With("ceiling", "400 m").Check();
        var outcome = Assert.Single(check.Outcomes, o => o.Verdict == RequirementVerdict.NoLongerHolds);
        Assert.Equal("apogee below the ceiling", outcome.Requirement.Name);
        Assert.False(check.Holds);
        Assert.Contains(check.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("The apogee is 446 m; it must be at most 400 m. Agreed for the field.", StringComparison.Ordinal));
        Assert.Empty(check.LookAgain);
    }

    [Fact]
    public void A_step_that_fails_does_not_stop_the_others()
    {
        // Filled above its rating it doesn't fly; its rating and its margin are told all the same.
        var check = DesignFixture.Curlew.With("fill pressure", "70 bar gauge").Check();
        var verdicts = check.Outcomes.ToDictionary(o => o.Requirement.Name, o => o.Verdict);
        Assert.Equal(RequirementVerdict.NoLongerHolds, verdicts["fill pressure within the rating"]);
        Assert.Equal(RequirementVerdict.CannotTell, verdicts["apogee below the ceiling"]);
        Assert.Equal(RequirementVerdict.Holds, verdicts["static margin"]);
        Assert.Equal("layup", Assert.Single(check.LookAgain).Name);
        Assert.All(check.Outcomes.Where(o => o.Verdict == RequirementVerdict.CannotTell), o => Assert.NotEmpty(o.Reason));
    }

    [Fact]
    public void One_reason_for_many_figures_is_said_once()
    {
        var other = DesignFixture.Curlew.With("evidence.tests.1.made as", "0123456789ab").Check();
        Assert.All(other.Outcomes, o => Assert.Contains("was of another vessel", o.Reason, StringComparison.Ordinal));
        Assert.Single(other.Findings, f => f.Message.Contains("was of another vessel", StringComparison.Ordinal));
        Assert.All(other.Outcomes, o => Assert.Contains(other.Findings, f => f.Message.Contains($"\"{o.Requirement.Name}\"",
            StringComparison.Ordinal)));
        Assert.DoesNotContain(other.Lines, l => l.Note.Contains("was of another vessel", StringComparison.Ordinal));
    }

    [Fact]
    public void What_rests_on_what_is_not_given_can_not_be_told()
    {
        var still = DesignFixture.Curlew.Without("site.wind").Check();
        var drift = still.Outcomes.Single(o => o.Requirement.Of == "drift");
        Assert.Equal((RequirementVerdict.CannotTell, false), (drift.Verdict, still.Holds));
        Assert.Contains("gives no wind", drift.Reason, StringComparison.Ordinal);
        var vessel = DesignFixture.Curlew.Without("body").Without("charge").Check();
        Assert.All(vessel.Outcomes, o => Assert.Equal(RequirementVerdict.CannotTell, o.Verdict));
        Assert.Contains(vessel.Lines, l => l.Name == "Curlew: highest allowed fill" && l.Value == "60 bar gauge");
    }

    [Fact]
    public void A_new_test_that_goes_badly_changes_the_verdict()
    {
        var worse = DesignFixture.Curlew.With("evidence.tests.2.pressure", "230 bar gauge").Check();
        Assert.Contains(worse.Outcomes, o => o.Requirement.Name == "fill pressure within the rating"
            && o.Verdict != RequirementVerdict.Holds);
    }

    [Fact]
    public void The_record_of_a_check_is_kept_and_compared()
    {
        var record = Curlew.Record;
        var now = DesignFixture.Curlew.With("ceiling", "400 m").Check().Record.ComparedWith(record);
        Assert.Equal(["ceiling: 400 m, was 600 m"], now.ChangedGivens);
        Assert.Single(now.Broken);
        Assert.Equal(record.ToJson(), NotebookKit.Record.DesignRecord.FromJson(record.ToJson()).ToJson());
    }
}
