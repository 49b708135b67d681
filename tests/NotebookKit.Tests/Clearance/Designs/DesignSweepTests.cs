using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.DesignFiles;

namespace NotebookKit.Tests.Clearance.Designs;

public class DesignSweepTests
{
    private static readonly Design Curlew = Design.Parse(DesignFixture.CurlewText, "curlew.json");

    private static readonly DesignSweep Two = Curlew.Sweep("fill pressure=30..60 bar gauge/3", "water fraction=28 %; 32 %");

    // By hand: each design by itself, changed and checked.
    [Fact]
    public void Every_combination_is_the_design_changed_and_checked_by_itself()
    {
        Assert.Equal(["30 bar gauge", "45 bar gauge", "60 bar gauge"], Two.Axes[0].Values);
        Assert.Equal(6, Two.Designs.Count);
        var apogee = Two.Column("apogee");
        for (var i = 0; i < 6; i++)
        {
            var (fill, water) = (Two.Axes[0].Values[i / 2], Two.Axes[1].Values[i % 2]);
            Assert.Equal([fill, water], Two.Designs[i].Values);
            var alone = Curlew.With("fill pressure", fill).With("water fraction", water);
            Assert.Equal(alone.Vehicle.Fly(alone.Site!).Apogee.Meters, apogee[i], 1e-9);
        }

        Assert.Equal("m", apogee.Unit);
    }

    [Fact]
    public void More_pressure_flies_higher_and_the_inputs_are_numbers_with_their_unit()
    {
        var (input, apogee) = (Two.Input(0), Two.Column("apogee"));
        Assert.Equal("bar gauge", input.Unit);
        Assert.Equal([30, 30, 45, 45, 60, 60], input.Values);
        Assert.True(apogee[0] < apogee[2] && apogee[2] < apogee[4]);
    }

    [Fact]
    public void A_design_that_breaks_a_requirement_or_can_not_be_made_says_so_in_its_line()
    {
        var sweep = Curlew.Sweep("fill pressure=40 bar gauge; 70 bar gauge; 200 bar gauge");
        Assert.Equal([true, false, false], sweep.Designs.Select(d => d.Holds));
        Assert.Contains("fill pressure within the rating", sweep.Designs[1].Against, StringComparison.Ordinal);
        Assert.Null(sweep.Designs[2].Outcomes);
        Assert.Contains("80 bar gauge", sweep.Designs[2].Refusal, StringComparison.Ordinal);
        Assert.Contains(sweep.Findings, f => f.Message.Contains("1 of 3 designs", StringComparison.Ordinal));
    }

    [Fact]
    public void Names_of_materials_are_swept_as_well()
    {
        var sweep = Curlew.Without("rating.working pressure").Sweep("vessel.plies.1=carbon sleeve 65 mm heavy; carbon sleeve 65 mm light");
        Assert.Equal([1.0, 2.0], sweep.Input(0).Values);
        var rated = sweep.Column("rated pressure");
        Assert.True(rated[1] < rated[0] || double.IsNaN(rated[1]));
    }

    // What was tested had another bore, or another hole at its nozzle end: a value changed for a run changes no test.
    [Theory]
    [InlineData("bore", "60 mm")]
    [InlineData("plies.1", "carbon sleeve 65 mm light")]
    [InlineData("throat", "20 mm")]
    public void Tests_of_the_vessel_as_the_file_has_it_do_not_speak_for_a_changed_one(string name, string value)
    {
        var changed = Curlew.With(name, value);
        Assert.All(Curlew.Evidence.Tests.Zip(changed.Evidence.Tests), t => Assert.True(t.First.Vessel.Liner == t.Second.Vessel.Liner
            && t.First.Vessel.Plies.SequenceEqual(t.Second.Vessel.Plies) && t.First.Vessel.NozzleEnd.Closure.Opening.Meters
            .Equals(t.Second.Vessel.NozzleEnd.Closure.Opening.Meters)));
        Assert.True(Curlew.Check().Holds);
        Assert.False(changed.Check().Holds);
    }

    // Godwit's booster is rated lower than its sustainer: the lower one counts.
    [Fact]
    public void Of_two_stages_the_lower_rating_is_shown()
    {
        var godwit = Design.Parse(DesignFixture.GodwitText, "godwit.json");
        var lower = Math.Min(godwit.Stages[0].Rating.WorkingPressure.Bar, godwit.Stages[1].Rating.WorkingPressure.Bar);
        Assert.Equal(lower, godwit.Sweep("ceiling=600 m; 700 m").Column("rated pressure")[0], 1e-9);
    }

    [Theory]
    [InlineData("55 bar gauge", RequirementVerdict.Holds)]
    [InlineData("65 bar gauge", RequirementVerdict.NoLongerHolds)]
    public void A_requirement_on_a_gauge_pressure_is_judged(string least, RequirementVerdict verdict)
    {
        var one = $$"""[{ "of": "rated pressure", "name": "rated", "at least": "{{least}}", "why": "Wanted." }]""";
        Assert.Equal(verdict, Curlew.Without("decisions").With("requirements", one).Check().Outcomes.Single().Verdict);
    }

    // Three figures of one rating are three answers: the same step of the chain isn't one figure.
    [Fact]
    public void Figures_of_one_rating_are_told_apart_whatever_was_asked_first()
    {
        var requirements = """
            [
              { "of": "rated pressure", "name": "a", "at least": "1 bar gauge", "why": "w" },
              { "of": "proof pressure", "name": "b", "at least": "1 bar gauge", "why": "w" },
              { "of": "design burst", "name": "c", "at least": "1 bar gauge", "why": "w" },
              { "of": "fill pressure", "name": "d", "at least": "1 bar gauge", "why": "w" }
            ]
            """;
        var outcomes = Curlew.Without("decisions").With("requirements", requirements).Check().Outcomes;
        var rating = Curlew.Rating;
        Assert.Equal([rating.WorkingPressure, rating.ProofPressure, rating.DesignBurst, Curlew.Stage.FillPressure!.Value],
            outcomes.Select(o => (GaugePressure)o.Computed!));
        var sweep = Curlew.Sweep("ceiling=600 m; 700 m");
        Assert.Equal(rating.ProofPressure.Bar, sweep.Column("proof pressure")[0], 1e-9);
        Assert.Equal(rating.DesignBurst.Bar, sweep.Column("design burst")[0], 1e-9);
    }

    [Fact]
    public void A_range_is_shown_with_digits_that_keep_its_values_apart_and_computed_exactly()
    {
        var axis = SweepAxis.Parse("fill pressure=20..60 bar gauge/100");
        Assert.Equal("20.404040404 bar gauge", axis.Values[1]);
        Assert.Equal("20.4 bar gauge", axis.Labels[1]);
        Assert.Equal(100, axis.Labels.Distinct().Count());
        var fine = SweepAxis.Parse("station=1.925..1.926 m/3");
        Assert.Equal(["1.925 m", "1.9255 m", "1.926 m"], fine.Labels);
        Assert.Equal(["11.25 mm", "13.125 mm"], SweepAxis.Parse("throat=11.25 mm; 13.125 mm; 11.25 mm").Labels);
    }

    [Fact]
    public void A_range_the_wrong_way_round_runs_upward() =>
        Assert.Equal(SweepAxis.Parse("fill pressure=20..60 bar gauge/5").Values,
            SweepAxis.Parse("fill pressure=60..20 bar gauge/5").Values);

    [Theory]
    [InlineData("fill pressure=20..60 bar gauge", "Write their number after a stroke: \"20..60 bar gauge/9\"")]
    [InlineData("fill pressure=20..60 bar gauge/", "Write their number after a stroke")]
    [InlineData("fill pressure=20..60 bar gauge/0", "to go through 0 values; a range has 2 to 1000")]
    [InlineData("fill pressure=20..60 bar gauge/1", "to go through 1 values; a range has 2 to 1000")]
    [InlineData("fill pressure=40..40 bar gauge/5", "begins and ends at one value")]
    public void What_is_wrong_with_a_range_is_said(string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<FormatException>(() => SweepAxis.Parse(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_sweep_of_a_million_is_refused_with_the_limit()
    {
        var refused = Assert.Throws<InvalidDesignException>(() => Curlew.Sweep("fill pressure=20..60 bar gauge/1000",
            "water fraction=20..40 %/1000"));
        Assert.Contains("10000", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fill pressure")]
    [InlineData("=20 bar gauge")]
    [InlineData("fill pressure=")]
    [InlineData("fill pressure=20..20 bar gauge/5")]
    [InlineData("fill pressure=20..60 bar gauge/1")]
    [InlineData("fill pressure=20..60 bar gauge/1000000000000")]
    public void What_is_no_sweep_is_refused_with_an_example(string text) =>
        Assert.NotEmpty(Assert.Throws<FormatException>(() => SweepAxis.Parse(text)).Message);

    [Fact]
    public void A_name_that_means_nothing_names_the_nearest_once()
    {
        var unknown = Assert.Throws<DesignFileException>(() => Curlew.Sweep("fil pressure=20..60 bar gauge/9"));
        Assert.Contains("fill pressure", unknown.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => Curlew.Sweep("throat=11 mm; 12 mm", "throat=13 mm"));
        Assert.Throws<InvalidDesignException>(() => Two.Column("colour"));
    }

    [Fact]
    public void A_reason_that_several_designs_share_is_said_once()
    {
        var other = DesignFixture.Curlew.With("evidence.tests.1.made as", "0123456789ab").Sweep("fill pressure=20..40 bar gauge/3");
        Assert.All(other.Lines, l => Assert.EndsWith("reason 1", l.Note, StringComparison.Ordinal));
        Assert.Single(other.Findings, f => f.Message.StartsWith("reason 1 of several designs: ", StringComparison.Ordinal));
    }
}
