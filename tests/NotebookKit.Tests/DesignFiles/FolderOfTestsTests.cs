using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>Tests of a club's folder, one file each, and what moves when one comes.</summary>
public sealed class FolderOfTestsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("nk-tests-").FullName;

    private static Design Fresh => DesignFixture.Curlew.Without("evidence").Without("rating.working pressure")
        .With("fill pressure", "20 bar gauge");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Files_of_tests_are_the_evidence_that_the_same_entries_in_the_design_are()
    {
        Write("r1.json", """{ "kind": "burst", "vessel": "R-1", "pressure": "340 bar gauge", "failed": "wall" }""");
        Write("r2.json", "// the second\n{ \"kind\": \"held proof\", \"vessel\": \"R-2\", \"pressure\": \"80 bar gauge\" }");
        var inside = Fresh.With("evidence", """
            { "tests": [ { "kind": "burst", "vessel": "R-1", "pressure": "340 bar gauge", "failed": "wall" },
              { "kind": "held proof", "vessel": "R-2", "pressure": "80 bar gauge" } ] }
            """);
        var outside = Fresh.WithTests(_folder);
        Assert.Equal(inside.Evidence.Tests.Select(t => (t.GetType(), t.Id, t.Pressure)),
            outside.Evidence.Tests.Select(t => (t.GetType(), t.Id, t.Pressure)));
        Assert.Equal(inside.Rating.WorkingPressure, outside.Rating.WorkingPressure);
        Assert.Equal(7, DesignFixture.Curlew.WithTests(_folder).Evidence.Tests.Count);
        Assert.Equal(Fresh, Fresh.WithTests(Path.Combine(_folder, "none")));
    }

    [Fact]
    public void A_mistake_names_the_test_file_with_line_and_column()
    {
        Write("r1.json", "{\n  \"kind\": \"burst\", \"vessel\": \"R-1\",\n  \"presure\": \"340 bar gauge\"\n}");
        var wrong = Assert.Throws<DesignFileException>(() => Fresh.WithTests(_folder));
        Assert.Equal(("r1.json", 3, 3), (wrong.File, wrong.Line, wrong.Column));
        Assert.Contains("\"pressure\" meant", wrong.Message, StringComparison.Ordinal);
    }

    // One file with a mistake among right ones: the mistake is that file's.
    [Fact]
    public void A_mistake_among_several_files_names_its_own()
    {
        Write("r1.json", """{ "kind": "held proof", "vessel": "R-1", "pressure": "80 bar gauge" }""");
        Write("r2.json", """{ "kind": "held proof", "vessel": "R-2", "pressure": "80 bar" }""");
        Write("r3.json", """{ "kind": "held proof", "vessel": "R-3", "pressure": "80 bar gauge" }""");
        Assert.Equal("r2.json", Assert.Throws<DesignFileException>(() => Fresh.WithTests(_folder)).File);
    }

    [Theory]
    [InlineData("// a remark\n{ \"vessel\": \"R-1\", \"kind\": \"held proof\", \"pressure\": \"80 bar gauge\" }", true)]
    [InlineData("{ \"kind\": \"held proof\", \"vessel\": \"R-1\", \"pressure\": \"80 bar gauge\", \"made as\": \"0123456789ab\" }", true)]
    [InlineData("{ \"kind\": \"held proof\", \"vessel\": \"R-1\", \"pressure\": \"81 bar gauge\" }", false)]
    [InlineData("{ \"kind\": \"held proof\", \"vessel\": \"R-1\", \"pressure\": \"80 bar gauge\", \"batch\": \"2\" }", false)]
    [InlineData("{ \"kind\": \"held proof\", \"vessel\": \"R-2\", \"pressure\": \"80 bar gauge\" }", false)]
    public void The_mark_of_a_test_is_of_what_it_says(string text, bool isSame)
    {
        Write("r1.json", """{ "kind": "held proof", "vessel": "R-1", "pressure": "80 bar gauge" }""");
        var mark = Assert.Single(Fresh.WithTests(_folder).Stage.TestMarks);
        Assert.Equal("held proof of R-1", mark.Name);
        Write("r1.json", text);
        Assert.Equal(isSame, mark == Assert.Single(Fresh.WithTests(_folder).Stage.TestMarks));
    }

    [Fact]
    public void Two_stages_have_a_folder_each()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "booster"));
        Write(Path.Combine("booster", "b1.json"), """{ "kind": "held proof", "vessel": "B-1", "pressure": "30 bar gauge" }""");
        var (with, without) = (DesignFixture.Godwit.WithTests(_folder), DesignFixture.Godwit);
        Assert.Equal(without.Stages[0].Evidence.Tests.Count + 1, with.Stages[0].Evidence.Tests.Count);
        Assert.Equal(without.Stages[1].Evidence.Tests.Count, with.Stages[1].Evidence.Tests.Count);
    }

    // By the checks themselves: what moved is what differs between them, and nothing else.
    [Fact]
    public void Two_states_are_compared_figure_by_figure()
    {
        var before = DesignFixture.Curlew;
        var after = before.With("ceiling", "400 m").With("water fraction", "20 %");
        var moved = after.Compare(before);
        var apogee = moved.Figures.Single(f => f.Name == "apogee");
        Assert.Equal(before.Check().Outcomes[1].Value, apogee.Before);
        Assert.Equal(after.Check().Outcomes[1].Value, apogee.After);
        Assert.DoesNotContain(moved.Figures, f => f.Name is "rated pressure" or "fill pressure");
        Assert.Equal(RequirementVerdict.NoLongerHolds, moved.Requirements.Single(r => r.Name == "apogee below the ceiling").After.Verdict);
        Assert.Empty(before.Compare(before).Figures);
        Assert.Equal("Nothing moved", before.Compare(before).Lines.Single().Name);
        var broken = before.With("fill pressure", "70 bar gauge").Compare(before);
        Assert.Equal(["layup"], broken.LookAgain.Select(d => d.Name));
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);
}
