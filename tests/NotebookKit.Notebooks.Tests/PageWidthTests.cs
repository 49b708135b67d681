using System.Net;
using System.Text.Json;
using Microsoft.Playwright;
using NotebookKit.Runner.Tests;

namespace NotebookKit.Notebooks.Tests;

/// <summary>Every page of the main job as a reader has it before him: on a phone, a tablet, a desk and paper.</summary>
[Collection(AllNotebooksTests.Name)]
public sealed class PageWidthTests(AllNotebooksRun all)
{
    private const int Height = 1000;
    private static readonly string Audit = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Pages", "audit.js"));

    public static TheoryData<string, int> Pages
    {
        get
        {
            var pages = new TheoryData<string, int>();
            foreach (var name in NotebookFolder.Names.Append("index"))
                foreach (var width in new[] { 390, 768, 1280 }) pages.Add(name, width);
            return pages;
        }
    }

    public static TheoryData<string> Names => [.. NotebookFolder.Names, "index"];

    [SkippableTheory, MemberData(nameof(Pages))]
    public async Task Nothing_is_wider_than_the_screen_and_no_label_lies_over_another(string name, int width)
    {
        await using var browser = await Browser.OpenAsync();
        await GoAsync(browser, name, width);
        await browser.KeepAsync($"page-{name}-{width}.png");
        Assert.Empty(await browser.Page.EvaluateAsync<string[]>(Audit));
        Assert.Empty(browser.Problems);
    }

    [SkippableTheory, MemberData(nameof(Names))]
    public async Task Every_link_leads_somewhere(string name)
    {
        await using var browser = await Browser.OpenAsync();
        await GoAsync(browser, name, 1280);
        var links = await browser.Page.EvaluateAsync<string[]>(
            "Array.from(document.querySelectorAll('a[href]')).map(a => a.href).filter(h => h.startsWith('file:'))");
        foreach (var link in links.Distinct())
        {
            var target = new Uri(link);
            Assert.True(File.Exists(target.LocalPath), $"{name} leads to {target.LocalPath}, which isn't there.");
            if (target.Fragment.Length > 1)
                Assert.Contains($"id=\"{Uri.UnescapeDataString(target.Fragment[1..])}\"",
                    WebUtility.HtmlDecode(await File.ReadAllTextAsync(target.LocalPath)), StringComparison.Ordinal);
        }
    }

    // axe-core (MPL-2.0) is fetched by npm for the tests alone.
    [SkippableTheory, MemberData(nameof(Names))]
    public async Task The_rules_of_accessibility_find_nothing(string name)
    {
        var rules = Path.Combine(NotebookFolder.Path, "..", "tests", "lab-front-end", "node_modules", "axe-core", "axe.min.js");
        Skip.IfNot(File.Exists(rules), "axe-core isn't here; run npm ci --ignore-scripts in tests/lab-front-end to have it.");
        await using var browser = await Browser.OpenAsync();
        await GoAsync(browser, name, 390);
        await browser.Page.EvaluateAsync(await File.ReadAllTextAsync(rules));
        var found = await browser.Page.EvaluateAsync<JsonElement>("""
            async () => (await axe.run(document, { preload: false,
              runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice"] }))
              .violations.map(v => v.id + ": " + v.help + ": " + v.nodes.slice(0, 3).map(n => n.target.join(" ")).join(" | "))
            """);
        Assert.Empty(found.EnumerateArray().Select(v => v.GetString()));
    }

    [SkippableTheory, MemberData(nameof(Names))]
    public async Task On_paper_stands_no_code_and_no_button_and_nothing_runs_out_of_the_sheet(string name)
    {
        // A4 within margins of 14 mm, at 96 px to the inch.
        await using var browser = await Browser.OpenAsync();
        await browser.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await GoAsync(browser, name, 688);
        await browser.Page.EvaluateAsync("window.dispatchEvent(new Event('beforeprint'))");
        if (await browser.Page.Locator("figure.chart").CountAsync() > 0)
            await browser.Page.WaitForFunctionAsync("document.documentElement.dataset.printed === 'yes'", null,
                new() { Timeout = 120_000 });
        Assert.Empty(await browser.Page.EvaluateAsync<string[]>(Audit));
        const string Buttons = "details.code:visible, .fold:visible, .contents:visible, .buttons:visible";
        Assert.Equal(0, await browser.Page.Locator(Buttons).CountAsync());
        Assert.Empty(await browser.Page.EvaluateAsync<string[]>("""
            Array.from(document.querySelectorAll("table, svg, pre, figure, p, li"))
              .filter(e => e.checkVisibility() && !e.closest("#js-plotly-tester"))
              .filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
              .map(e => e.tagName + " " + e.textContent.trim().slice(0, 60))
            """));
        var breaks = await browser.Page.EvaluateAsync<string[]>("""
            Array.from(document.querySelectorAll("figure, table")).filter(e => e.checkVisibility())
              .filter(e => e.tagName === "FIGURE" || e.querySelectorAll("tr").length <= 8).map(e => getComputedStyle(e).breakInside)
            """);
        // A table of more than eight rows breaks between two rows; kept whole it would leave half a sheet empty.
        Assert.All(breaks, how => Assert.Equal("avoid", how));
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

    private async Task GoAsync(Browser browser, string name, int width)
    {
        await browser.Page.SetViewportSizeAsync(width, Height);
        var file = name == "index" ? Path.Combine(all.Output, "index.html") : Path.Combine(all.Output, "pages", name + ".html");
        await browser.Page.GotoAsync(new Uri(file).AbsoluteUri);
        if (await browser.Page.Locator("figure.chart").CountAsync() > 0)
            await browser.Page.WaitForFunctionAsync("document.documentElement.dataset.drawn === 'yes'", null, new() { Timeout = 120_000 });
        await browser.Page.EvaluateAsync("() => new Promise(done => setTimeout(done, 700))");
    }
}
