using System.Text.Json.Nodes;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Running;

namespace NotebookKit.Runner.Tests.Running;

public sealed class MissingNamesTests
{
    private static readonly NotebookCell Third = new(new JsonObject { ["source"] = "" }, CellKind.Code, 3);

    private static CellNames Names(string code) => CellNames.Of(code, Path.GetTempPath());

    // What the reader is told of a later cell after the third one failed.
    private static string? After(string failed, int? line, string later)
    {
        var missing = new MissingNames();
        missing.Failed(Third, Names(failed), line);
        return missing.WhyNot(Names(later));
    }

    [Theory]
    [InlineData("var p = Make();", 1, "p + 1")]
    [InlineData("var (p, q) = Make();", 1, "q + 1")]
    [InlineData("Make(out var p);", 1, "p + 1")]
    [InlineData("p = Make();", 1, "p")]
    [InlineData("p = p with { Bore = 2 };", 1, "var q = p;")]
    [InlineData("if (wide) { p = Make(); }", 1, "p")]
    [InlineData("list.Add(Make());", 1, "list.Count")]
    [InlineData("p.Bore = Make();", 1, "p")]
    [InlineData("double Area(double d) => d * nowhere;", null, "Area(2)")]
    [InlineData("record Part(int Bore) : Nowhere;", null, "new Part(2)")]
    [InlineData("var p = Make();", 1, "p = p with { Bore = 2 };")]
    [InlineData("var p = Make();", 1, "items.Select(i => i + p)")]
    [InlineData("var p = Make();", 1, "$\"{p}\"")]
    [InlineData("double Deep() => throw new Exception();\nvar p = 1;\nvar q = Deep();", 1, "p")]
    public void A_cell_that_needs_what_was_not_made_is_not_computed(string failed, int? line, string later) =>
        Assert.Matches(@"^Not computed: this cell needs \w+, which cell 3 could not make\.$", After(failed, line, later));

    [Theory]
    [InlineData("var p = Make();", 1, "q + 1")]
    [InlineData("var p = 1;\nvar q = Make();", 2, "p")]
    [InlineData("var p = Make();", 1, "items.Select(p => p + 1)")]
    [InlineData("var p = Make();", 1, "burst.p")]
    [InlineData("var p = Make();", 1, "Fly(p: 3)")]
    [InlineData("var p = Make();", 1, "var v = w with { p = 3 };")]
    [InlineData("var p = Make();", 1, "p = 3;")]
    [InlineData("var p = Make();", 1, "var p = 3; var q = p;")]
    [InlineData("var p = Make();", 1, "foreach (var p in items) { Show(p); }")]
    [InlineData("design.Require(\"apogee\", Make(), Limit.AtLeast, 3.Metres(), \"why\");", 1, "design.Build()")]
    public void A_cell_that_needs_nothing_of_it_is_computed(string failed, int? line, string later) =>
        Assert.Null(After(failed, line, later));

    [Fact]
    public void A_name_that_is_made_anew_is_there_again()
    {
        var missing = new MissingNames();
        missing.Failed(Third, Names("var p = Make();"), 1);
        missing.Made(Names("p = 3;"));
        Assert.Null(missing.WhyNot(Names("p")));
    }

    [Fact]
    public void Names_of_a_loaded_file_count_and_so_do_its_requirements()
    {
        using var folder = new TestFolder();
        File.WriteAllText(folder["part.csx"], "var p = Make();\ndesign.Require(\"apogee\", p, Limit.AtLeast, 3, \"why\");");
        var names = CellNames.Of("#load \"part.csx\"", folder.Path);
        Assert.Contains("p", names.Makes);
        Assert.Equal(["apogee"], names.Requirements);
        Assert.Empty(names.DoneBefore(2));
    }
}
