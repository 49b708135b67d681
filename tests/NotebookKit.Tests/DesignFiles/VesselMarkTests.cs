using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>A test of a vessel that was changed since doesn't speak for the changed one: its mark tells.</summary>
public class VesselMarkTests
{
    private const string Bore = """{ "value": "66 mm", "from": "50 mm", "to": "67 mm", "why": "Then." }""";

    private static Design Curlew { get; } = Design.Parse(DesignFixture.CurlewText, "curlew.json");

    [Fact]
    public void The_demo_designs_say_which_vessels_were_tested() =>
        Assert.All(Curlew.Evidence.Tests.Concat(Design.Parse(DesignFixture.GodwitText, "godwit.json").Stages
            .SelectMany(s => s.Evidence.Tests)), t => Assert.Equal(t.Mark, t.MadeAs));

    [Theory]
    [InlineData("\"66 mm\"", "\"65 mm\"")]
    [InlineData("\"layers\": 2", "\"layers\": 3")]
    [InlineData("\"tail\": \"40 mm\", \"tied off\": true", "\"tail\": \"30 mm\", \"tied off\": true")]
    [InlineData("{ \"value\": \"13 mm\"", "{ \"value\": \"14 mm\"")]
    public void A_vessel_changed_in_the_file_is_not_rated_on_tests_of_the_old_one(string was, string now)
    {
        var text = DesignFixture.CurlewText.Replace(was, now, StringComparison.Ordinal);
        Assert.NotEqual(DesignFixture.CurlewText, text);
        var changed = Design.Parse(text);
        var refused = Assert.Throws<InvalidDesignException>(() => changed.Rating);
        Assert.Contains("The vessel was changed since", refused.Message, StringComparison.Ordinal);
        Assert.Contains(changed.Check().Outcomes, o => o.Verdict == RequirementVerdict.CannotTell);
    }

    [Theory]
    [InlineData("\"mass\": \"15 g\"", "\"mass\": \"17 g\"")]
    [InlineData("\"other parts\": \"15 g\"", "\"other parts\": \"18 g\"")]
    [InlineData("\"As long as the oven and the transport box allow.\"", "\"As long as the oven allows.\"")]
    [InlineData("\"value\": \"58 bar gauge\"", "\"value\": \"50 bar gauge\"")]
    public void What_only_weighs_or_explains_or_is_not_the_vessels_leaves_the_tests_valid(string was, string now)
    {
        var text = DesignFixture.CurlewText.Replace(was, now, StringComparison.Ordinal);
        Assert.NotEqual(DesignFixture.CurlewText, text);
        Assert.True(Design.Parse(text).Rating.IsRated);
    }

    // As the file has it, so that a sweep over the bore stays a sweep.
    [Fact]
    public void A_value_changed_for_a_run_leaves_the_marks_alone()
    {
        var changed = Curlew.With("bore", "65 mm");
        Assert.All(changed.Evidence.Tests, t => Assert.Equal(t.Mark, t.MadeAs));
    }

    [Fact]
    public void A_test_that_does_not_say_what_was_tested_is_named_with_the_mark_to_write()
    {
        var unmarked = Curlew.Without("evidence.tests.2.made as");
        var check = unmarked.Check();
        Assert.Contains(check.Findings, f => f.Severity == FindingSeverity.Note
            && f.Message.Contains($"K-2, \"made as\": \"{Curlew.Evidence.Tests[1].MadeAs}\"", StringComparison.Ordinal));
        Assert.DoesNotContain(Curlew.Check().Findings, f => f.Message.Contains("made as", StringComparison.Ordinal));
    }

    // What differs is laid over the vessel as it is now, which brings the test back.
    [Fact]
    public void A_test_that_says_what_differs_counts_again()
    {
        var text = DesignFixture.CurlewText.Replace("\"66 mm\"", "\"65 mm\"", StringComparison.Ordinal);
        var changed = Design.Parse(text);
        var old = Curlew.Evidence.Tests[1];
        var test = $$"""
            { "kind": "burst", "vessel": "K-2", "pressure": "344 bar gauge", "failed": "wall",
              "differs": { "liner": { "bore": {{Bore}} } }, "made as": "{{old.MadeAs}}" }
            """;
        var mended = changed.With("evidence", $$"""{ "tests": [ {{test}} ] }""");
        Assert.Equal(mended.Evidence.Tests[0].Mark, mended.Evidence.Tests[0].MadeAs);
        Assert.Equal(old.Vessel.Liner.Bore.Meters, mended.Evidence.Tests[0].Vessel.Liner.Bore.Meters, 1e-12);
    }
}
