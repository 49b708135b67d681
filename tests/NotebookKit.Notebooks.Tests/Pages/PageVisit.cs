using System.Text.Json;
using Microsoft.Playwright;
using NotebookKit.Runner.Tests;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace NotebookKit.Notebooks.Tests.Pages;

/// <summary>What one page of the main job showed in a browser: at each width, printed, and followed.</summary>
internal sealed class PageVisit
{
    private const int Height = 1000;
    private static readonly string Audit = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Pages", "audit.js"));

    /// <summary>The widths of a phone, a tablet and a desk [px].</summary>
    public static readonly int[] Widths = [390, 768, 1280];

    /// <summary>The sheets that it is printed on.</summary>
    public static readonly string[] Papers = ["A4", "Letter"];

    /// <summary>What is wrong at a width, by the boxes, and what the browser complained of.</summary>
    public Dictionary<int, (string[] Found, string[] Problems)> At { get; } = [];

    /// <summary>Where its links lead, among files.</summary>
    public string[] Links { get; private set; } = [];

    /// <summary>What the rules of accessibility find; none where they aren't here.</summary>
    public string[]? Inaccessible { get; private set; }

    /// <summary>What is wrong at the width of a sheet, by the boxes.</summary>
    public string[] WrongOnPaper { get; private set; } = [];

    /// <summary>How much code and how many buttons stand on paper.</summary>
    public int ButtonsOnPaper { get; private set; }

    /// <summary>What runs out of the sheet.</summary>
    public string[] OutOfTheSheet { get; private set; } = [];

    /// <summary>How figures and short tables break.</summary>
    public string[] Breaks { get; private set; } = [];

    /// <summary>How full each sheet of a paper is.</summary>
    public Dictionary<string, double[]> Shares { get; } = [];

    // axe-core (MPL-2.0) is fetched by npm for the tests alone.
    private static string Rules => Path.Combine(NotebookFolder.Path, "..", "tests", "lab-front-end", "node_modules", "axe-core",
        "axe.min.js");

    /// <summary>Opens a page or a sheet of paper.</summary>
    /// <param name="browser">Where it is opened; whatever was there before is gone.</param>
    /// <param name="file">The file.</param>
    /// <param name="picture">What its pictures are called; null for a sheet, which is only printed.</param>
    public static async Task<PageVisit> ToAsync(Browser browser, string file, string? picture)
    {
        var (visit, page) = (new PageVisit(), browser.Page);
        await page.EmulateMediaAsync(new() { Media = Media.Null });
        if (picture is null)
        {
            await OpenAsync(browser, file, Widths[^1]);
        }
        else
        {
            // A phone and a desk open the page; a tablet is turned.
            await OpenAsync(browser, file, Widths[0]);
            await visit.LookAsync(browser, picture, Widths[0]);
            await visit.AskTheRulesAsync(page);
            await OpenAsync(browser, file, Widths[2]);
            await visit.LookAsync(browser, picture, Widths[2]);
            await NarrowAsync(page, Widths[1]);
            await visit.LookAsync(browser, picture, Widths[1]);
        }

        // As a reader prints it: the page that he has before him, one paper after the other.
        foreach (var paper in Papers)
        {
            visit.Shares[paper] = await SharesAsync(page, paper, picture is null ? 10 : 14);
            await DrawnAsync(page);
        }

        if (picture is not null) await visit.PrintAsync(page);
        return visit;
    }

    private static async Task OpenAsync(Browser browser, string file, int width)
    {
        browser.Problems.Clear();
        await browser.Page.SetViewportSizeAsync(width, Height);
        await browser.Page.GotoAsync(new Uri(file).AbsoluteUri);
        // A sheet has no script: nothing comes after it has loaded.
        if (await browser.Page.Locator("script").CountAsync() > 0)
            await browser.Page.WaitForFunctionAsync("document.documentElement.dataset.settled === 'yes'");
    }

    // Charts are drawn anew for another width.
    private static async Task NarrowAsync(IPage page, int width)
    {
        await page.EvaluateAsync("delete document.documentElement.dataset.drawn");
        await page.SetViewportSizeAsync(width, Height);
        await DrawnAsync(page);
    }

    private static async Task DrawnAsync(IPage page)
    {
        if (await page.Locator("figure.chart").CountAsync() > 0)
            await page.WaitForFunctionAsync("document.documentElement.dataset.drawn === 'yes'");
    }

    private async Task LookAsync(Browser browser, string picture, int width)
    {
        await browser.KeepAsync($"page-{picture}-{width}.png");
        At[width] = (await browser.Page.EvaluateAsync<string[]>(Audit), [.. browser.Problems]);
        Links = await browser.Page.EvaluateAsync<string[]>(
            "Array.from(document.querySelectorAll('a[href]')).map(a => a.href).filter(h => h.startsWith('file:'))");
    }

    private async Task AskTheRulesAsync(IPage page)
    {
        if (!File.Exists(Rules)) return;
        await page.EvaluateAsync(await File.ReadAllTextAsync(Rules));
        var found = await page.EvaluateAsync<JsonElement>("""
            async () => (await axe.run(document, { preload: false,
              runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice"] }))
              .violations.map(v => v.id + ": " + v.help + ": " + v.nodes.slice(0, 3).map(n => n.target.join(" ")).join(" | "))
            """);
        Inaccessible = [.. found.EnumerateArray().Select(v => v.GetString()!)];
    }

    // A4 within margins of 14 mm, at 96 px to the inch.
    private async Task PrintAsync(IPage page)
    {
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await NarrowAsync(page, 688);
        await page.EvaluateAsync("window.dispatchEvent(new Event('beforeprint'))");
        if (await page.Locator("figure.chart").CountAsync() > 0)
            await page.WaitForFunctionAsync("document.documentElement.dataset.printed === 'yes'");
        WrongOnPaper = await page.EvaluateAsync<string[]>(Audit);
        ButtonsOnPaper = await page.Locator("details.code:visible, .fold:visible, .contents:visible, .buttons:visible").CountAsync();
        OutOfTheSheet = await page.EvaluateAsync<string[]>("""
            Array.from(document.querySelectorAll("table, svg, pre, figure, p, li"))
              .filter(e => e.checkVisibility() && !e.closest("#js-plotly-tester"))
              .filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
              .map(e => e.tagName + " " + e.textContent.trim().slice(0, 60))
            """);
        Breaks = await page.EvaluateAsync<string[]>("""
            Array.from(document.querySelectorAll("figure, table")).filter(e => e.checkVisibility())
              .filter(e => e.tagName === "FIGURE" || e.querySelectorAll("tr").length <= 8).map(e => getComputedStyle(e).breakInside)
            """);
    }

    private static async Task<double[]> SharesAsync(IPage page, string paper, double marginMm)
    {
        var margin = FormattableString.Invariant($"{marginMm}mm");
        var print = await page.PdfAsync(new() { Format = paper, PrintBackground = true,
            Margin = new() { Top = margin, Bottom = margin, Left = margin, Right = margin } });
        using var document = PdfDocument.Open(print);
        return [.. document.GetPages().Select(p => ShareOf(p, marginMm / 25.4 * 72))];
    }

    // From the upper margin down to the lowest letter, in points.
    private static double ShareOf(Page page, double margin)
    {
        var lowest = page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).Select(l => l.StartBaseLine.Y)
            .DefaultIfEmpty(page.Height - margin).Min();
        return (page.Height - margin - lowest) / (page.Height - (2 * margin));
    }
}
