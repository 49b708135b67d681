using System.Text.RegularExpressions;

namespace NotebookKit.Notebooks.Tests;

public sealed partial class NotebookRunTests(AllNotebooksRun all) : IClassFixture<AllNotebooksRun>
{
    public static TheoryData<string> Notebooks => NotebookFolder.Cases;

    [Theory, MemberData(nameof(Notebooks))]
    public void It_runs_from_top_to_bottom(string name)
    {
        var failure = all.Reports[name].Failure;
        Assert.True(failure is null, $"{name}, {failure?.Place}\n{failure?.Error.Message}");
    }

    [Theory, MemberData(nameof(Notebooks))]
    public void Its_page_shows_every_formula_and_picture(string name)
    {
        var page = all.PageOf(name);
        Assert.Empty(Problem().Matches(page).Select(m => m.Value));
        Assert.DoesNotContain("picture not found:", page, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Notebooks))]
    public void Its_links_to_other_notebooks_lead_somewhere(string name) =>
        Assert.All(PageLink().Matches(all.PageOf(name)).Select(m => m.Groups["name"].Value), linked => Assert.Contains(linked, NotebookFolder.Names));

    [GeneratedRegex("<code class=\"tex-problem\"[^>]*>")]
    private static partial Regex Problem();

    [GeneratedRegex("<a href=\"(?<name>[^\":/#]+)\\.html[\"#]")]
    private static partial Regex PageLink();
}
