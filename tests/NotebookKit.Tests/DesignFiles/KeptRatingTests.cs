using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>A change that leaves vessel, tests and rules as they are keeps the rating; every other one is rated anew.</summary>
public class KeptRatingTests
{
    [Theory]
    [InlineData("curlew.json", "charge.water fraction", "41 %")]
    [InlineData("curlew.json", "site.wind.speed", "5 m/s")]
    [InlineData("curlew.json", "recovery.canopy.diameter", "1 m")]
    [InlineData("godwit.json", "stages.booster.charge.water fraction", "41 %")]
    [InlineData("godwit.json", "stages.sustainer.recovery.deployment.delay", "1 s")]
    public void A_kept_rating_is_that_of_the_whole_computed_anew(string file, string path, string value)
    {
        var design = Design.Read(DesignFixture.PathOf(file));
        var changed = design.With(path, value);
        var anew = Design.Parse(changed.ToText());
        Assert.Equal(anew.ToText(), changed.ToText());
        Assert.Equal(anew.Givens.Select(g => (g.Path, g.Value)), changed.Givens.Select(g => (g.Path, g.Value)));
        for (var i = 0; i < design.Stages.Count; i++)
        {
            Assert.True(ReferenceEquals(design.Stages[i].Rating, changed.Stages[i].Rating));
            Assert.Equal(anew.Stages[i].Rating.WorkingPressure, changed.Stages[i].Rating.WorkingPressure);
            Assert.Equal(anew.Stages[i].Rating.DesignBurst, changed.Stages[i].Rating.DesignBurst);
        }

        Assert.Equal(anew.Validate(), changed.Validate());
        Assert.Equal(Exact(anew), Exact(changed));
    }

    // The boss and the opening of the nozzle end are stated as so much more than the throat.
    [Fact]
    public void A_value_that_the_vessel_takes_over_is_rated_anew()
    {
        var wide = DesignFixture.Curlew.With("throat", "16 mm");
        Assert.False(ReferenceEquals(DesignFixture.Curlew.Stage.Rating, wide.Stage.Rating));
        Assert.NotEqual(DesignFixture.Curlew.Vessel.NozzleEnd, wide.Vessel.NozzleEnd);
    }

    [Theory]
    [InlineData("vessel.length", "1200 mm")]
    [InlineData("evidence.tests.1.pressure", "300 bar gauge")]
    [InlineData("name", "Other")]
    [InlineData("rating.rules", "{ \"kind\": \"by risk\", \"chance\": 0.0001 }")]
    public void What_a_rating_rests_on_is_rated_anew(string path, string value)
    {
        var changed = DesignFixture.Curlew.With(path, value);
        Assert.False(ReferenceEquals(DesignFixture.Curlew.Stage.Rating, changed.Stage.Rating));
        Assert.False(ReferenceEquals(changed.With("water fraction", "41 %").With(path, value).Stage.Rating, changed.Stage.Rating));
    }

    private static List<string> Exact(Design design)
    {
        var check = design.Check();
        return [.. DesignFigures.Kinds.Keys.Where(f => !DesignFigures.IsCostly(f)).Select(f => $"{f}: {(check.Figures.Of(f,
            DesignSweep.WorseSide(f), out var why) is { } value ? GivenText.Exact(value) : why)}")];
    }
}
