using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using NotebookKit.DesignFiles;
using NotebookKit.Runner.Sheets;

namespace NotebookKit.Runner.Tests.Sheets;

/// <summary>The sheets as they come out of the printer and as a phone shows them.</summary>
public sealed partial class SheetFolderTests : IDisposable
{
    private static readonly string[] Names = ["flight-card", "proof-sheet", "pad-sheet", "templates", "shopping-list"];

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_command_writes_five_sheets_of_a_design()
    {
        var made = await ProgramRun.RunAsync(["sheets", Notebook("curlew.json"), "--out", folder["sheets"]]);
        Assert.True(made.ExitCode == 0, made.Output + made.Errors);
        Assert.All(Names, n => Assert.True(File.Exists(folder[$"sheets/{n}.html"]), n));
        var card = await File.ReadAllTextAsync(folder["sheets/flight-card.html"]);
        Assert.Contains("<b>NO-GO</b>", card, StringComparison.Ordinal);
        Assert.Contains("ange safety officer decides", card, StringComparison.Ordinal);
        var wrong = await ProgramRun.RunAsync(["sheets", folder["nowhere.json"]]);
        Assert.Equal(2, wrong.ExitCode);
    }

    [Fact]
    public void Every_step_of_the_proof_has_a_box_and_every_caution_stands_in_full()
    {
        var design = Design.Read(Notebook("curlew.json"));
        SheetFolder.Write(design, SheetFolder.Shelf(Path.Combine(TestFolder.Repository, "notebooks")), folder["s"]);
        var html = File.ReadAllText(folder["s/proof-sheet.html"]);
        var plan = design.Stage.Proof.Plan();
        var boxes = plan.Checklist.Count(l => l.StartsWith("[ ] ", StringComparison.Ordinal));
        Assert.Equal(boxes, Steps().Matches(html).Sum(m => Items().Count(m.Value)) + Ticks().Count(html));
        Assert.DoesNotContain("more)", html, StringComparison.Ordinal);
        foreach (var sheet in new[] { "flight-card", "proof-sheet", "pad-sheet" })
            Assert.Contains("Compressed air can kill.", File.ReadAllText(folder[$"s/{sheet}.html"]), StringComparison.Ordinal);
        Assert.All(Names, n => Assert.DoesNotContain("<script", File.ReadAllText(folder[$"s/{n}.html"]), StringComparison.Ordinal));
        Assert.Contains("not given", File.ReadAllText(folder["s/shopping-list.html"]), StringComparison.Ordinal);
    }

    [Fact]
    public void The_tests_of_a_folder_count_for_its_sheets_as_for_its_check()
    {
        var bare = Design.Read(Notebook("curlew.json")).Without("evidence");
        bare.Write(folder["design.json"]);
        Directory.CreateDirectory(folder["tests"]);
        File.WriteAllText(folder["tests/t1.json"],
            """{ "kind": "burst", "vessel": "T-1", "pressure": "340 bar gauge", "failed": "wall" }""");
        var seen = SheetFolder.DesignOf(folder["design.json"], folder["."], GivenOverrides.None);
        Assert.Single(seen.Evidence.Tests);
        Assert.Equal(bare.WithTests(folder["tests"]), seen);
    }

    [Fact]
    public void Two_stages_have_their_sheets_too()
    {
        SheetFolder.Write(Design.Read(Notebook("godwit.json")), null, folder["two"]);
        var html = File.ReadAllText(folder["two/proof-sheet.html"]);
        Assert.Contains("Godwit booster: before any pressure", html, StringComparison.Ordinal);
        Assert.Contains("Godwit sustainer: before any pressure", html, StringComparison.Ordinal);
    }

    [SkippableFact, Trait("Length", "long")]
    public async Task Nothing_is_cut_off_on_A4_on_letter_or_on_a_phone()
    {
        await using var browser = await Browser.OpenAsync();
        SheetFolder.Write(Design.Read(Notebook("curlew.json")), SheetFolder.Shelf(Path.Combine(TestFolder.Repository, "notebooks")),
            folder["s"]);
        foreach (var name in Names)
        {
            var address = new Uri(folder[$"s/{name}.html"]).AbsoluteUri;
            // 190 mm of A4 and 195.9 mm of letter at 96 px an inch; a phone's screen.
            foreach (var (width, media) in new[] { (718, Media.Print), (740, Media.Print), (390, Media.Screen) })
            {
                await browser.Page.SetViewportSizeAsync(width, 900);
                await browser.Page.EmulateMediaAsync(new() { Media = media });
                await browser.Page.GotoAsync(address);
                var wide = await browser.Page.EvaluateAsync<string[]>(
                    "w => [...document.querySelectorAll('body *')].filter(e => !e.closest('svg, style') || e.tagName === 'svg')"
                    + ".filter(e => e.getBoundingClientRect().right > w + 1).map(e => e.tagName + ': ' + e.textContent.slice(0, 40))",
                    width);
                Assert.True(wide.Length == 0, $"{name} at {width} px: {string.Join(" | ", wide)}");
                if (media == Media.Screen) await browser.KeepAsync($"sheet-{name}-390.png");
            }

            await browser.Page.EmulateMediaAsync(new() { Media = Media.Print });
            foreach (var format in new[] { "A4", "Letter" })
            {
                var pdf = await browser.Page.PdfAsync(new() { Format = format, PreferCSSPageSize = false,
                    Margin = new() { Top = "10mm", Bottom = "10mm", Left = "10mm", Right = "10mm" } });
                var pages = Pages().Count(Encoding.Latin1.GetString(pdf));
                var html = await File.ReadAllTextAsync(folder[$"s/{name}.html"]);
                var expected = name == "templates" ? 1 + Sections().Count(html) + Plans().Count(html) : 0;
                if (expected > 0) Assert.NotEqual(0, Plans().Count(html));
                if (expected > 0) Assert.Equal(expected, pages);
                else Assert.InRange(pages, 2, 4);
            }
        }

        Assert.All(browser.Requests, r => Assert.StartsWith("file:", r, StringComparison.Ordinal));
        Assert.Empty(browser.Problems);
    }

    [SkippableFact, Trait("Length", "long")]
    public async Task Templates_print_at_full_size()
    {
        await using var browser = await Browser.OpenAsync();
        SheetFolder.Write(Design.Read(Notebook("curlew.json")), null, folder["s"]);
        await browser.Page.SetViewportSizeAsync(740, 900);
        await browser.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await browser.Page.GotoAsync(new Uri(folder["s/templates.html"]).AbsoluteUri);
        // Corners in the browser's own pixels, of which 96 are an inch.
        async Task<double> Across(string selector) => 25.4 / 96 * await browser.Page.EvaluateAsync<double>(
            "s => { const e = document.querySelector(s), m = e.getScreenCTM(), b = e.getBBox(); return b.width * m.a; }", selector);
        Assert.Equal(100, await Across(".ruler-mm line"), 0.1);
        Assert.Equal(101.6, await Across(".ruler-in line"), 0.1);
        Assert.Equal(130, await Across(".template polygon"), 0.1);
    }

    private static string Notebook(string name) => Path.Combine(TestFolder.Repository, "notebooks", name);

    [GeneratedRegex("""<ol class="steps">.*?</ol>""", RegexOptions.Singleline)]
    private static partial Regex Steps();

    [GeneratedRegex("<li>")]
    private static partial Regex Items();

    [GeneratedRegex("tickbox\" role")]
    private static partial Regex Ticks();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Pages();

    [GeneratedRegex("<section class=\"page")]
    private static partial Regex Sections();

    [GeneratedRegex("<div class=\"figure plan")]
    private static partial Regex Plans();
}
