using System.Net;
using NotebookKit.Notebooks.Tests.Pages;

namespace NotebookKit.Notebooks.Tests;

/// <summary>Every page of the main job as a reader has it before him: on a phone, a tablet, a desk and paper.</summary>
[Collection(AllNotebooksTests.Name)]
public sealed class PageWidthTests(AllNotebooksRun all)
{
    public static TheoryData<string, int> Pages
    {
        get
        {
            var pages = new TheoryData<string, int>();
            foreach (var name in NotebookFolder.Names.Append("index"))
                foreach (var width in PageVisit.Widths) pages.Add(name, width);
            return pages;
        }
    }

    public static TheoryData<string> Names => [.. NotebookFolder.Names, "index"];

    [SkippableTheory, Trait("Length", "long"), MemberData(nameof(Pages))]
    public async Task Nothing_is_wider_than_the_screen_and_no_label_lies_over_another(string name, int width)
    {
        var (found, problems) = (await all.Visits.OfPageAsync(name)).At[width];
        Assert.Empty(found);
        Assert.Empty(problems);
    }

    [SkippableTheory, Trait("Length", "long"), MemberData(nameof(Names))]
    public async Task Every_link_leads_somewhere(string name)
    {
        foreach (var link in (await all.Visits.OfPageAsync(name)).Links.Distinct())
        {
            var target = new Uri(link);
            Assert.True(File.Exists(target.LocalPath), $"{name} leads to {target.LocalPath}, which isn't there.");
            if (target.Fragment.Length > 1)
                Assert.Contains($"id=\"{Uri.UnescapeDataString(target.Fragment[1..])}\"",
                    WebUtility.HtmlDecode(await File.ReadAllTextAsync(target.LocalPath)), StringComparison.Ordinal);
        }
    }

    [SkippableTheory, Trait("Length", "long"), MemberData(nameof(Names))]
    public async Task The_rules_of_accessibility_find_nothing(string name)
    {
        var found = (await all.Visits.OfPageAsync(name)).Inaccessible;
        Skip.If(found is null, "axe-core isn't here; run npm ci --ignore-scripts in tests/lab-front-end to have it.");
        Assert.Empty(found!);
    }

    [SkippableTheory, Trait("Length", "long"), MemberData(nameof(Names))]
    public async Task On_paper_stands_no_code_and_no_button_and_nothing_runs_out_of_the_sheet(string name)
    {
        var visit = await all.Visits.OfPageAsync(name);
        Assert.Empty(visit.WrongOnPaper);
        Assert.Equal(0, visit.ButtonsOnPaper);
        Assert.Empty(visit.OutOfTheSheet);
        // A table of more than eight rows breaks between two rows; kept whole it would leave half a sheet empty.
        Assert.All(visit.Breaks, how => Assert.Equal("avoid", how));
    }

    [Fact]
    public void The_folder_of_pages_weighs_no_more_than_eight_megabytes() =>
        Assert.InRange(Directory.EnumerateFiles(Path.Combine(all.Output, "pages")).Sum(f => new FileInfo(f).Length), 1, 8_000_000);

    [Fact]
    public void No_list_is_cut_short()
    {
        foreach (var name in NotebookFolder.Names) Assert.DoesNotMatch(@"\([0-9]+ more\)|\.\.\. \([0-9]+\)", all.PageOf(name));
    }

    [Fact]
    public void The_proof_checklist_has_all_its_steps_with_boxes_and_blanks()
    {
        var list = System.Text.RegularExpressions.Regex.Match(all.PageOf("03-proving-it-with-water"),
            "<div class=\"nk-out nk-checklist\">.*?</ol>", System.Text.RegularExpressions.RegexOptions.Singleline).Value;
        Assert.Contains("Zero the measure.", list, StringComparison.Ordinal);
        Assert.Contains("write the record, mark the vessel", list, StringComparison.Ordinal);
        Assert.Contains("Pumped <span class=\"nk-blank\"></span> mL", list, StringComparison.Ordinal);
        Assert.DoesNotContain("[ ]", list, StringComparison.Ordinal);
    }

    [Fact]
    public void The_flight_card_on_paper_is_the_one_that_the_notebook_shows_with_its_evidence() =>
        Assert.Contains("<b>GO</b>", File.ReadAllText(Path.Combine(all.Output, "sheets", "flight-card.html")), StringComparison.Ordinal);

    [Fact]
    public void The_index_leads_to_card_proof_plan_cutting_plan_and_record()
    {
        var index = File.ReadAllText(Path.Combine(all.Output, "index.html"));
        var main = index[index.IndexOf("<main", StringComparison.Ordinal)..index.IndexOf("</main>", StringComparison.Ordinal)];
        foreach (var words in new[] { "Flight card", "Proof sheet", "Cutting plan", "Design record" })
            Assert.Matches($"<a href=\"(pages|sheets)/[^\"]+\">{words}</a>", main);
        Assert.InRange(main.IndexOf("GO</strong>", StringComparison.Ordinal), 1, main.IndexOf("class=\"buttons\"",
            StringComparison.Ordinal));
        Assert.Equal(1, System.Text.RegularExpressions.Regex.Count(main, "Compressed air can"));
        // Counts and times stand in the folded line at the foot alone.
        var foot = main.IndexOf("<details class=\"run\">", StringComparison.Ordinal);
        Assert.DoesNotMatch("[0-9] cells|<th>cells|ran to their end", main[..foot]);
        Assert.Contains("ran to their end", main[foot..], StringComparison.Ordinal);
    }
}
