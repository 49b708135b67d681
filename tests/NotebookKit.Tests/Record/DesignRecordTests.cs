using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;

namespace NotebookKit.Tests.Record;

public class DesignRecordTests
{
    private static DesignRecord Curlew(params string[] overrides)
    {
        var record = new DesignRecordBuilder("Curlew", GivenOverrides.Parse(overrides));
        var fill = record.Given("fill pressure", 30.BarGauge(), 5.BarGauge(), 60.BarGauge(), "What the club's regulator gives.");
        record.Given("body diameter", 70.Millimetres(), 50.Millimetres(), 110.Millimetres(), "The mandrel at hand.");
        var rated = record.Require("fill pressure under the rating", fill, Limit.AtMost, 35.BarGauge(), "The vessel is rated to that.");
        record.Decide("sleeve", "one light carbon sleeve", ["two sleeves: 90 g more"], "Lightest that is rated high enough.", rated);
        return record.Build();
    }

    [Fact]
    public void Holds_what_was_assumed_required_and_decided()
    {
        var record = Curlew();
        Assert.Equal("30 bar gauge", record.Givens[0].Value);
        Assert.Equal("5 bar gauge to 60 bar gauge", record.Givens[0].Range);
        Assert.True(record.Requirements[0].Holds);
        Assert.True(record.Decisions[0].StillRight);
        Assert.Empty(record.Findings);
    }

    [Fact]
    public void A_decision_whose_condition_fails_asks_for_another_look()
    {
        var record = Curlew("Fill Pressure=600 psi gauge");
        Assert.True(record.Givens[0].Overridden);
        Assert.False(record.Requirements[0].Holds);
        Assert.Contains(record.Findings, f => f.Message.Contains("no longer holds", StringComparison.Ordinal));
    }

    [Fact]
    public void Survives_being_kept_as_json()
    {
        var record = Curlew("body diameter=2.5 in");
        var read = DesignRecord.FromJson(record.ToJson());
        Assert.Equal(record.Givens, read.Givens);
        Assert.Equal(record.Requirements, read.Requirements);
        Assert.Equal(record.Decisions[0].Beat, read.Decisions[0].Beat);
        Assert.True(read.ComparedWith(record).IsQuiet);
    }

    [Fact]
    public void Comparison_names_what_changed_and_what_broke()
    {
        var change = Curlew("fill pressure=40 bar gauge").ComparedWith(Curlew());
        Assert.Equal(["fill pressure: 40 bar gauge, was 30 bar gauge"], change.ChangedGivens);
        Assert.Equal(["fill pressure under the rating is 40 bar gauge, required at most 35 bar gauge"], change.Broken);
        Assert.Single(change.LookAgain);
    }

    [Fact]
    public void A_cell_run_twice_states_a_given_once()
    {
        var builder = new DesignRecordBuilder("twice", GivenOverrides.None);
        builder.Given("dry mass", 1.Kilograms(), 0.5.Kilograms(), 3.Kilograms(), "Weighed.");
        builder.Given("dry mass", 1.2.Kilograms(), 0.5.Kilograms(), 3.Kilograms(), "Weighed again.");
        Assert.Equal("1.2 kg", Assert.Single(builder.Build().Givens).Value);
    }

    [Theory]
    [InlineData("fill pressure=30 bar", "the word gauge")]
    [InlineData("fill pressure=30 mm gauge", "the word gauge")]
    [InlineData("body diameter=70", "with its unit")]
    [InlineData("body diameter=70 bar", "with its unit")]
    public void An_override_without_its_unit_is_refused(string text, string remedy)
    {
        var error = Assert.Throws<FormatException>(() => Curlew(text));
        Assert.Contains(remedy, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_override_out_of_range_is_refused() =>
        Assert.Throws<OutOfRangeException>(() => Curlew("fill pressure=90 bar gauge"));

    [Theory]
    [InlineData("fill pressure")]
    [InlineData("=30 bar gauge")]
    [InlineData("fill pressure=")]
    public void An_override_that_is_no_assignment_is_refused(string text) =>
        Assert.Throws<FormatException>(() => GivenOverrides.Parse([text]));

    [Theory]
    [InlineData("not json")]
    [InlineData("{}")]
    public void What_is_not_a_record_is_refused(string text) =>
        Assert.Throws<FormatException>(() => DesignRecord.FromJson(text));
}
