using NotebookKit.Runner.Commands;
using NotebookKit.Runner.Givens;

namespace NotebookKit.Runner.Tests.Givens;

public sealed class GivenCheckTests
{
    private static GivenPlan Check(string given, params string[] notebooks) =>
        GivenCheck.Of(GivenOverrides.Parse([given]), notebooks.Select(n => TestFolder.Fixture(Path.Combine("givens", n + ".ipynb"))));

    private static RequestException Refused(string given, params string[] notebooks)
        => Assert.Throws<RequestException>(() => Check(given, notebooks));

    [Theory]
    [InlineData("fil pressure=20 bar gauge", "No notebook of this run has a given \"fil pressure\"; the nearest is \"fill pressure\".")]
    [InlineData("bose=60 mm", "the nearest is \"bore\".")]
    [InlineData("fill=20 bar gauge", "the nearest is \"fill pressure\".")]
    [InlineData("fp=20 bar gauge", "the nearest is \"fill pressure\".")]
    [InlineData("pressure=20 bar gauge", "may mean \"working pressure\" or \"fill pressure\"; write the whole name.")]
    [InlineData("fill pressure=20", "the unit is missing")]
    [InlineData("fill pressure=20 bar", "gauge or absolute")]
    [InlineData("fill pressure=20 mm", "isn't a pressure")]
    [InlineData("bore=60", "Write a length with its unit, for example \"66 mm\".")]
    [InlineData("bore=60 bar gauge", "isn't a length")]
    [InlineData("fill pressure=61 bar gauge", "fill pressure is 61 bar gauge; it must be 5 bar gauge to 60 bar gauge. Two bar below "
        + "the regulator.")]
    [InlineData("ends=1.5", "isn't a whole number")]
    [InlineData("share=1 %", "isn't a plain number")]
    [InlineData("in a remark=1", "No notebook of this run")]
    public void What_cannot_be_set_is_refused_with_the_list(string given, string sentence)
    {
        var refusal = Refused(given, "trainer");
        Assert.Contains(sentence, refusal.Message, StringComparison.Ordinal);
        Assert.EndsWith("No cell was run.", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("  fill pressure     gauge pressure, 5 bar gauge to 60 bar gauge", refusal.Details);
        Assert.Contains("  water fraction    ratio, 0 % to 90 %", refusal.Details);
    }

    [Theory]
    [InlineData("fill pressure=20 bar gauge")]
    [InlineData("Fill PRESSURE=300 psi gauge")]
    [InlineData("bore=2.5 in")]
    [InlineData("water fraction=30 %")]
    [InlineData("share=0.25")]
    [InlineData("length=700 mm")]
    public void What_a_notebook_states_may_be_set(string given)
    {
        var plan = Check(given, "trainer");
        Assert.Equal([given.Split('=')[0]], plan.MustTake["trainer"]);
        Assert.Empty(plan.Notes);
    }

    [Fact]
    public void A_given_of_one_notebook_is_enough_and_the_others_are_named()
    {
        var plan = Check("booster fill=20 bar gauge", "trainer", "stages");
        Assert.Equal(["These notebooks have no given \"booster fill\" and run on their own values: trainer."], plan.Notes);
        Assert.Empty(plan.MustTake["trainer"]);
        Assert.Equal(["booster fill"], plan.MustTake["stages"]);
    }

    [Fact]
    public void A_value_has_to_suit_every_notebook_that_states_the_given()
    {
        Assert.Empty(Check("water fraction=30 %", "trainer", "stages").Notes);
        var refusal = Refused("water fraction=2 %", "trainer", "stages");
        Assert.Contains("it must be 5 % to 60 %", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("The notebook stages can't take this value.", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("  water fraction    ratio, 0 % to 90 %   (in trainer)", refusal.Details);
        Assert.Contains("  water fraction    ratio, 5 % to 60 %   (in stages)", refusal.Details);
    }

    [Fact]
    public void A_name_that_may_be_made_at_run_time_is_left_to_the_run_and_said_so()
    {
        var plan = Check("booster mass=1.5 kg", "trainer", "at-run-time");
        Assert.Contains("It can't be checked beforehand, because in at-run-time cell 1 makes the name of a given while it runs.",
            Assert.Single(plan.Notes), StringComparison.Ordinal);
        Assert.Empty(plan.MustTake["trainer"]);
        Assert.Equal(["booster mass"], plan.MustTake["at-run-time"]);
    }

    [Fact]
    public void Notebooks_without_givens_take_none() => Assert.Contains(
        "state no givens", Assert.Throws<RequestException>(() => GivenCheck.Of(GivenOverrides.Parse(["bore=60 mm"]),
            [TestFolder.Fixture("passes.ipynb")])).Message, StringComparison.Ordinal);

    // The notebooks that club members run: both designs' givens, found without running them.
    [Fact]
    public void The_lessons_state_their_givens_where_the_check_finds_them()
    {
        var lessons = Directory.GetFiles(Path.Combine(TestFolder.Repository, "notebooks"), "*.ipynb");
        Assert.NotEmpty(GivenCheck.Of(GivenOverrides.Parse(["fill pressure=25 bar gauge"]), lessons).Notes);
        var refusal = Assert.Throws<RequestException>(() => GivenCheck.Of(GivenOverrides.Parse(["fil pressure=20 bar gauge"]), lessons));
        Assert.Contains("may mean \"fill pressure\"", refusal.Message, StringComparison.Ordinal);
        Assert.Contains(refusal.Details, l => l.Contains("booster fill", StringComparison.Ordinal)
            && l.Contains("gauge pressure, 5 bar gauge to 60 bar gauge", StringComparison.Ordinal));
    }
}
