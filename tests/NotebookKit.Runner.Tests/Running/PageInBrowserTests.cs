using Microsoft.Playwright;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Running;

[Collection(AllFixturesTests.Name), Trait("Length", "long")]
public sealed class PageInBrowserTests(AllFixturesRun all)
{
    private static readonly string[] Beside = ["plotly.min.js", "maths.css"];

    private string Address(string name) => new Uri(Path.Combine(all.Output, "pages", name + ".html")).AbsoluteUri;

    [SkippableFact, Trait("Length", "short")]
    public async Task A_page_draws_its_charts_and_equations_without_any_request()
    {
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(Address("passes"));
        await browser.Page.WaitForSelectorAsync("figure.chart svg.main-svg .scatterlayer path.js-line");

        Assert.Equal("NotebookKit Math", await browser.Page.EvaluateAsync<string>(
            "Array.from(document.fonts).filter(f => f.status === 'loaded').map(f => f.family.replaceAll('\"', '')).join()"));
        Assert.Contains("height [m]", await browser.Page.InnerTextAsync("figure.chart"), StringComparison.Ordinal);
        var equation = await browser.Page.Locator("math").Last.BoundingBoxAsync();
        Assert.InRange(equation!.Height, 10, 200);
        Assert.Empty(browser.Problems);
        Assert.All(browser.Requests, r => Assert.True(r == Address("passes")
            || Beside.Any(b => r == Address("passes").Replace("passes.html", b, StringComparison.Ordinal))
            || r.StartsWith("data:", StringComparison.Ordinal)
            || r.StartsWith("blob:", StringComparison.Ordinal), r));
    }

    [SkippableFact]
    public async Task Code_folds_and_unfolds()
    {
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(Address("passes"));
        var code = browser.Page.Locator("#cell-1 pre");
        Assert.False(await code.IsVisibleAsync());
        await browser.Page.ClickAsync("text=Show all code");
        Assert.True(await code.IsVisibleAsync());
        await browser.Page.ClickAsync("text=Hide all code");
        Assert.False(await code.IsVisibleAsync());
        await browser.Page.ClickAsync("#cell-1 summary");
        Assert.True(await code.IsVisibleAsync());
        await browser.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.False(await browser.Page.Locator("#cell-1").IsVisibleAsync());
    }

    [SkippableFact]
    public async Task Fifteen_charts_are_drawn()
    {
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(Address("many-charts"));
        await browser.Page.WaitForFunctionAsync("document.querySelectorAll('figure.chart .js-line').length === 15");
        Assert.Empty(browser.Problems);
    }

    [SkippableFact]
    public async Task A_live_explorer_is_its_precomputed_figure_on_a_page()
    {
        await using var browser = await Browser.OpenAsync();
        var page = browser.Page;
        await page.GotoAsync(Address("picks"));
        // v²/2g, by hand: 3 m/s on Earth (g taken as 10 m/s²) 0.45 m, on the Moon (1.62 m/s²) 2.78 m; 9 m/s there 25 m.
        await page.WaitForSelectorAsync(".nk-explorer-numbers dd:text-is('0.450 m')");
        await page.SelectOptionAsync(".nk-explorer select", "Moon");
        await page.WaitForSelectorAsync(".nk-explorer-numbers dd:text-is('2.78 m')");
        await page.Locator(".nk-explorer input[type=range]").FillAsync("400");
        await page.WaitForSelectorAsync(".nk-explorer-numbers dd:text-is('25.0 m')");
        await page.SelectOptionAsync(".nk-explorer select", "nowhere");
        await page.WaitForSelectorAsync(".nk-explorer .nk-error:has-text('Without <gravity> nothing comes down.')");
        await page.ClickAsync(".nk-explorer button:has-text('Back to the start')");
        await page.WaitForSelectorAsync(".nk-explorer-numbers dd:text-is('0.450 m')");
        Assert.Empty(browser.Problems);
        Assert.DoesNotContain("vnd.jupyter.widget", await page.ContentAsync(), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Markup_in_texts_and_data_never_runs()
    {
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(Address("hostile"));
        await browser.Page.WaitForSelectorAsync("figure.chart svg.main-svg");
        Assert.True(await browser.Page.EvaluateAsync<bool>("window.hit === undefined"));
    }

    [SkippableFact]
    public async Task The_index_leads_to_the_pages()
    {
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(new Uri(Path.Combine(all.Output, "index.html")).AbsoluteUri);
        await browser.Page.ClickAsync("text=A short lesson");
        Assert.Equal("A short lesson", await browser.Page.InnerTextAsync("h1"));
        await browser.Page.ClickAsync("footer >> text=All lessons");
        Assert.Equal("Pressurised-water rockets, from layup to landing", await browser.Page.InnerTextAsync("h1"));
    }

    [SkippableFact]
    public async Task A_page_whose_library_was_left_behind_says_so()
    {
        await using var browser = await Browser.OpenAsync();
        using var folder = new TestFolder();
        File.Copy(Path.Combine(all.Output, "pages", "passes.html"), folder["passes.html"]);
        await browser.Page.GotoAsync(new Uri(folder["passes.html"]).AbsoluteUri);
        Assert.Contains("plotly.min.js, which lies beside the pages", await browser.Page.InnerTextAsync(".no-library"),
            StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task A_script_that_an_output_points_to_is_not_run()
    {
        await using var browser = await Browser.OpenAsync();
        using var folder = new TestFolder();
        File.WriteAllText(folder["other.js"], "window.hit = true;");
        var page = new PageFrame("Trial").Write("<p>Text</p><script src=\"other.js\"></script>", hasCharts: true, single: false);
        File.WriteAllText(folder["page.html"], page);
        await browser.Page.GotoAsync(new Uri(folder["page.html"]).AbsoluteUri);
        Assert.True(await browser.Page.EvaluateAsync<bool>("window.hit === undefined"));
    }

    [SkippableFact]
    public async Task A_single_page_draws_alone()
    {
        using var folder = new TestFolder();
        var run = await ProgramRun.RunAsync("run", all.Input("passes"), "--out", folder["out"], "--single");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["passes.html"], Directory.GetFiles(folder["out", "pages"]).Select(Path.GetFileName));
        await using var browser = await Browser.OpenAsync();
        var address = new Uri(folder["out", "pages", "passes.html"]).AbsoluteUri;
        await browser.Page.GotoAsync(address);
        await browser.Page.WaitForSelectorAsync("figure.chart svg.main-svg .scatterlayer path.js-line");
        Assert.Empty(browser.Problems);
        Assert.All(browser.Requests, r => Assert.True(r == address || r.StartsWith("data:", StringComparison.Ordinal)
            || r.StartsWith("blob:", StringComparison.Ordinal), r));
    }

    [SkippableFact]
    public async Task A_flight_card_fits_one_sheet_and_goes_on_under_its_title_where_it_breaks()
    {
        // A4 within margins of 15 mm, at 96 px to the inch.
        const int Width = 680, Height = 1009;
        await using var browser = await Browser.OpenAsync();
        await browser.Page.SetViewportSizeAsync(Width, Height);
        await browser.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await browser.Page.GotoAsync(Address("scatters"));
        var card = browser.Page.Locator(".nk-card");
        Assert.InRange((await card.BoundingBoxAsync())!.Height, 300, Height);
        // Between two of its parts only, and never alone on a sheet: the card to hand over is a sheet of its own beside the pages.
        Assert.Equal("auto", await card.EvaluateAsync<string>("card => getComputedStyle(card).breakInside"));
        Assert.Equal("table-header-group",
            await card.Locator(".nk-title").EvaluateAsync<string>("title => getComputedStyle(title).display"));
        foreach (var part in new[] { "table.nk-lines", ".nk-evidence", ".nk-ticks", ".nk-cautions" })
            Assert.Equal("avoid", await card.Locator(part).Last.EvaluateAsync<string>("e => getComputedStyle(e).breakInside"));
        Assert.Equal("auto", await card.EvaluateAsync<string>("card => getComputedStyle(card).breakBefore"));
        Assert.InRange(await card.Locator(".nk-ticks li").CountAsync(), 10, 20);
        Assert.Equal("table-cell", await card.Locator("td.nk-note").First.EvaluateAsync<string>("cell => getComputedStyle(cell).display"));
        Assert.Contains("Never approach a pressurised vessel", await card.InnerTextAsync(), StringComparison.Ordinal);
    }
}
