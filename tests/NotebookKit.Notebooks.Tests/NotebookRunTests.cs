using System.Text.RegularExpressions;

namespace NotebookKit.Notebooks.Tests;

[Collection(AllNotebooksTests.Name)]
public sealed partial class NotebookRunTests(AllNotebooksRun all)
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
        Assert.All(PageLink().Matches(all.PageOf(name)).Select(m => m.Groups["name"].Value),
            linked => Assert.Contains(linked, NotebookFolder.Names));

    [Theory, MemberData(nameof(Notebooks))]
    public void Its_page_opens_with_three_main_numbers_or_more(string name)
    {
        var opening = Opening().Match(all.PageOf(name)).Value;
        Assert.InRange(Regex.Count(opening, "<dd>"), 3, 12);
        Assert.InRange(Regex.Count(opening.Split("<details")[0], "<dd>"), 3, 5);
    }

    [Theory, MemberData(nameof(Notebooks))]
    public void Its_page_says_each_caution_in_full_once_and_again_on_a_card_alone(string name)
    {
        var page = Card().Replace(all.PageOf(name), "");
        var said = Caution().Matches(page).Select(m => m.Groups["text"].Value).ToList();
        Assert.NotEmpty(said);
        Assert.Equal(said.Distinct(), said);
        Assert.All(Link().Matches(page).Select(m => m.Groups["id"].Value),
            id => Assert.Single(Regex.Matches(all.PageOf(name), $" id=\"{id}\"")));
    }

    [GeneratedRegex("^.*?<details class=\"code\"", RegexOptions.Singleline)]
    private static partial Regex Opening();

    [GeneratedRegex("<div class=\"nk-out nk-card\">.*?<p class=\"nk-sign\">", RegexOptions.Singleline)]
    private static partial Regex Card();

    [GeneratedRegex("<li( id=\"caution-[^\"]+\")?>(?<text><b>[^<]+\\.</b> [^<]+)</li>")]
    private static partial Regex Caution();

    [GeneratedRegex("<a href=\"#(?<id>caution-[^\"]+)\">")]
    private static partial Regex Link();

    [GeneratedRegex("<code class=\"tex-problem\"[^>]*>")]
    private static partial Regex Problem();

    [GeneratedRegex("<a href=\"(?<name>[^\":/#]+)\\.html[\"#]")]
    private static partial Regex PageLink();
}
