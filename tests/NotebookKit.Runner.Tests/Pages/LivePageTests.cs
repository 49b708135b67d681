using System.Text.Json;
using Microsoft.Playwright;
using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Provenance;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>The page that carries the compiled library, as a member opens it from a disk.</summary>
[Collection(LivePageOnce.Name), Trait("Length", "long")]
public sealed class LivePageTests(OpenedLivePage live)
{
    internal static readonly string[] Parts = ["design", "beside", "bench", "pad", "kept"];

    internal static string Address => new Uri(LivePage.Built).AbsoluteUri;

    internal static string DesignText(string name) => File.ReadAllText(Path.Combine(TestFolder.Repository, "notebooks", name));

    [SkippableFact, Trait("Length", "short")]
    public async Task Opened_from_a_disk_the_page_computes_the_demo_design_and_asks_nobody_for_anything()
    {
        var browser = await live.BeginAsync();
        Assert.Contains("Curlew", await browser.Page.InnerTextAsync("#verdict"), StringComparison.Ordinal);
        Assert.Contains(Design.Parse(DesignText("curlew.json")).Rating.WorkingPressure.ToString(),
            await browser.Page.InnerTextAsync("#figures"), StringComparison.Ordinal);
        await browser.Page.WaitForSelectorAsync("#pictures svg");
        Assert.All(browser.Requests, r => Assert.True(r.Split('#')[0] == Address || r.StartsWith("blob:", StringComparison.Ordinal), r));
        Assert.Empty(browser.Problems);
        await browser.KeepAsync("live-page-1280.png");
    }

    [SkippableFact]
    public async Task A_change_typed_by_keyboard_alone_is_computed_shown_beside_the_old_and_undone()
    {
        var browser = await live.BeginAsync();
        await browser.Page.FocusAsync("#find");
        await TabToAsync(browser, "Charge fill pressure");
        await browser.Page.Keyboard.PressAsync("Control+A");
        await browser.Page.Keyboard.TypeAsync("62 bar gauge");
        await NextStateAsync(browser, () => browser.Page.Keyboard.PressAsync("Enter"));
        Assert.Contains("Fill pressure within the rating: does not hold", await browser.Page.InnerTextAsync("#verdict"),
            StringComparison.Ordinal);
        Assert.Contains("before: holds", await browser.Page.InnerTextAsync("#moved"), StringComparison.Ordinal);
        Assert.Contains("Look again at: layup", await browser.Page.InnerTextAsync("#moved"), StringComparison.Ordinal);
        Assert.Contains("was 58 bar gauge", await browser.Page.InnerTextAsync("#figures"), StringComparison.Ordinal);
        await NextStateAsync(browser, () => browser.Page.ClickAsync("#undo"));
        Assert.Contains("All 5 requirements hold", await browser.Page.InnerTextAsync("#verdict"), StringComparison.Ordinal);
        await NextStateAsync(browser, () => browser.Page.ClickAsync("#redo"));
        Assert.Contains("does not hold", await browser.Page.InnerTextAsync("#verdict"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task What_was_typed_survives_a_reload_and_can_be_wiped()
    {
        var browser = await live.BeginAsync();
        await TypeAsync(browser, "Charge fill pressure", "45 bar gauge");
        await browser.Page.ReloadAsync();
        await ReadyAsync(browser.Page);
        Assert.Contains("45 bar gauge", await browser.Page.InnerTextAsync("#figures"), StringComparison.Ordinal);
        await GoAsync(browser, "kept");
        Assert.Contains("local storage on this device", await browser.Page.InnerTextAsync("#where"), StringComparison.Ordinal);
        await browser.Page.ClickAsync("#wipe");
        await browser.Page.ReloadAsync();
        await ReadyAsync(browser.Page);
        Assert.Contains("58 bar gauge", await browser.Page.InnerTextAsync("#figures"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task After_changes_the_page_has_every_value_as_the_library_has_it()
    {
        var browser = await live.BeginAsync();
        await SameAsync();
        // Opening, thread and boss of the nozzle end take over the throat.
        await TypeAsync(browser, "Nozzle throat", "12 mm");
        await SameAsync();
        await TypeAsync(browser, "Vessel length", "1250 mm");
        await NextStateAsync(browser, () => browser.Page.ClickAsync("#undo"));
        await SameAsync();
        await TypeAsync(browser, "Charge fill pressure", "45 bar gauge");
        await SameAsync();
        await browser.Page.ReloadAsync();
        await ReadyAsync(browser.Page);
        await TypeAsync(browser, "Nozzle throat", "11 mm");
        await SameAsync();
        // What is told of another throat is the throat and what takes it over; of a ply less, everything.
        Assert.Equal("nozzle.throat vessel.nozzle end", await ToldAsync("'nozzle.throat', '10 mm'", "changedGivens"));
        Assert.Equal("none", await ToldAsync("'nozzle.throat', '10 mm'", "givens"));
        Assert.Equal("none", await ToldAsync("'vessel.plies.4', null", "changedGivens"));

        Task<string> ToldAsync(string change, string list) => browser.Page.EvaluateAsync<string>(
            $"async () => {{ const told = (await ask('Turn', desk.states[desk.at].id, {change}, true)).{list}; "
            + "return told ? [...new Set(told.map(g => g.path.split('.').slice(0, 2).join('.')))].sort().join(' ') : 'none'; }");

        async Task SameAsync() => Assert.Equal(
            await browser.Page.EvaluateAsync<string>(
                "async () => JSON.stringify((await ask('Answer', desk.states[desk.at].id, 0)).givens)"),
            await browser.Page.EvaluateAsync<string>("() => JSON.stringify(desk.answer.givens)"));
    }

    [SkippableFact]
    public async Task A_value_without_its_unit_gets_the_librarys_sentence_and_the_last_good_answer_stays()
    {
        var browser = await live.BeginAsync();
        var before = await browser.Page.InnerTextAsync("#figures");
        var field = browser.Page.GetByLabel("Charge fill pressure", new() { Exact = true }).First;
        await field.FillAsync("62");
        await field.PressAsync("Enter");
        await browser.Page.WaitForSelectorAsync(".wrong:not(:empty)");
        Assert.Contains("the unit is missing", await browser.Page.Locator(".wrong:not(:empty)").First.InnerTextAsync(),
            StringComparison.Ordinal);
        Assert.Equal(before, await browser.Page.InnerTextAsync("#figures"));
    }

    [SkippableFact]
    public async Task A_file_that_is_no_design_gets_the_librarys_sentence_with_line_and_column()
    {
        var browser = await live.BeginAsync();
        using var folder = new TestFolder();
        var text = DesignText("curlew.json").Replace("\"bore\"", "\"boer\"", StringComparison.Ordinal);
        await File.WriteAllTextAsync(folder["wrong.json"], text);
        await browser.Page.SetInputFilesAsync("#open-file", folder["wrong.json"]);
        await browser.Page.WaitForSelectorAsync("#problem .failure");
        var said = Assert.Throws<DesignFiles.Trees.DesignFileException>(() => Design.Read(folder["wrong.json"])).Message;
        Assert.Contains(said, await browser.Page.InnerTextAsync("#problem"), StringComparison.Ordinal);
        Assert.Contains("All 5 requirements hold", await browser.Page.InnerTextAsync("#verdict"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Markup_in_a_file_is_shown_as_text_and_two_stages_are_computed()
    {
        var browser = await live.BeginAsync();
        using var folder = new TestFolder();
        var text = Design.Parse(DesignText("godwit.json")).With("requirements.1.why", "<img src=x onerror=alert(1)>").ToText();
        await File.WriteAllTextAsync(folder["two.json"], text);
        await NextStateAsync(browser, () => browser.Page.SetInputFilesAsync("#open-file", folder["two.json"]));
        Assert.Contains("<img src=x", await browser.Page.InnerTextAsync("#requirements"), StringComparison.Ordinal);
        await browser.Page.WaitForSelectorAsync("#pictures svg");
        Assert.Equal(0, await browser.Page.Locator("img").CountAsync());
        Assert.Empty(browser.Problems);
    }

    [SkippableFact]
    public async Task A_saved_design_is_a_file_that_the_library_reads_and_never_lets_old_tests_speak_for_a_changed_vessel()
    {
        var browser = await live.BeginAsync();
        await TypeAsync(browser, "Charge fill pressure", "45 bar gauge");
        var kept = Design.Parse(await SavedAsync(browser));
        Assert.Equal(45, kept.Stage.FillPressure!.Value.Bar, 9);
        Assert.Equal(5, kept.Evidence.Tests.Count);
        await TypeAsync(browser, "Vessel liner bore", "62 mm");
        Assert.Empty(Design.Parse(await SavedAsync(browser)).Evidence.Tests);
        Assert.Contains("are left out of this file", await browser.Page.InnerTextAsync("#status"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task No_part_is_wider_than_a_phone_and_the_rules_of_accessibility_find_nothing()
    {
        var browser = await live.BeginAsync(width: 390);
        var rules = Path.Combine(TestFolder.Repository, "tests", "lab-front-end", "node_modules", "axe-core", "axe.min.js");
        foreach (var part in Parts)
        {
            await GoAsync(browser, part);
            if (part == "pad")
            {
                await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Compute the fill and the card" }).ClickAsync();
                await browser.Page.WaitForSelectorAsync(".sheet .go");
            }

            Assert.InRange(await browser.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), 1, 390);
            await browser.KeepAsync($"live-page-{part}-390.png");
            if (!File.Exists(rules)) continue;
            await browser.Page.EvaluateAsync(await File.ReadAllTextAsync(rules));
            var found = await browser.Page.EvaluateAsync<JsonElement>("""
                async () => (await axe.run(document, { preload: false,
                  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice"] }))
                  .violations.map(v => v.id + ": " + v.help + ": " + v.nodes.slice(0, 3).map(n => n.target.join(" ")).join(" | "))
                """);
            Assert.Empty(found.EnumerateArray().Select(v => v.GetString()));
        }
    }

    [SkippableFact]
    public async Task Where_WebAssembly_is_switched_off_or_nothing_may_be_stored_the_page_says_so()
    {
        await using var off = await Browser.OpenAsync();
        await off.Page.AddInitScriptAsync("delete globalThis.WebAssembly;");
        await off.Page.GotoAsync(Address);
        await off.Page.WaitForSelectorAsync("#problem .failure");
        Assert.Contains("no WebAssembly", await off.Page.InnerTextAsync("#problem"), StringComparison.Ordinal);

        await using var full = await Browser.OpenAsync();
        await full.Page.AddInitScriptAsync(
            "Storage.prototype.setItem = Storage.prototype.getItem = () => { throw new DOMException('no', 'SecurityError'); };");
        await full.Page.GotoAsync(Address + "#kept");
        await ReadyAsync(full.Page);
        Assert.Contains("This browser keeps nothing", await full.Page.InnerTextAsync("#where"), StringComparison.Ordinal);
        Assert.Empty(full.Problems);
    }

    [Fact]
    public void The_page_says_each_caution_of_the_library_once()
    {
        var html = File.ReadAllText(LivePage.Built);
        foreach (var caution in new[] { Cautions.StoredEnergy, Cautions.Proof, Cautions.Composite, Cautions.Bench, Cautions.Flight,
            Cautions.Prediction })
            Assert.Equal(2, html.Split($"<b>{caution.Topic}.</b> {caution.Text}").Length);
    }

    [Fact]
    public void The_page_weighs_at_most_four_megabytes() => Assert.InRange(new FileInfo(LivePage.Built).Length, 1_000_000, 4_000_000);

    [SkippableFact]
    public async Task Two_hundred_designs_have_the_same_figures_and_verdicts_in_the_page_as_on_the_desktop()
    {
        var browser = await live.BeginAsync();
        var random = new Random(20261127);
        List<string> wrong = [];
        foreach (var text in Enumerable.Range(0, 200).Select(i => Varied(i, random)))
        {
            var answer = await browser.Page.EvaluateAsync<JsonElement>("text => notebookKit.figures(text)", text);
            var check = Design.Parse(text).Check();
            foreach (var figure in DesignFigures.Kinds.Keys.Where(f => !DesignFigures.IsCostly(f)))
            {
                var own = check.Figures.Of(figure, DesignSweep.WorseSide(figure), out var why) is { } value ? GivenText.Exact(value)
                    : $"none: {why}";
                var page = answer.GetProperty("figures").GetProperty(figure).GetString()!;
                if (!IsSame(own, page, 1e-9)) wrong.Add($"{figure}: {own} on the desktop, {page} in the page");
            }

            Assert.Equal(check.Outcomes.Select(o => $"{o.Requirement.Name}: {o.Verdict}"),
                answer.GetProperty("verdicts").EnumerateArray().Select(v => v.GetString()!));
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} figures differ:\n{string.Join('\n', wrong)}");
    }

    // A number so far with the same unit; a reason word for word.
    private static bool IsSame(string own, string page, double tolerance)
    {
        var (left, right) = (own.Split(' ', 2), page.Split(' ', 2));
        return double.TryParse(left[0], out var a) && double.TryParse(right[0], out var b)
            ? left.Skip(1).SequenceEqual(right.Skip(1)) && Math.Abs(a - b) <= tolerance * Math.Abs(a) : own == page;
    }

    private static string Varied(int number, Random random)
    {
        string Between(double low, double high, string unit) =>
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{low + (random.NextDouble() * (high - low)):0.###} {unit}");
        var design = Design.Parse(DesignText(number % 4 == 3 ? "godwit.json" : "curlew.json"));
        if (number % 4 == 3)
        {
            return design.With("stages.booster.charge.fill pressure", Between(15, 30, "bar gauge"))
                .With("stages.sustainer.charge.water fraction", Between(20, 45, "%")).With("site.elevation", Between(0, 400, "m")).ToText();
        }

        return design.With("charge.fill pressure", Between(20, 60, "bar gauge")).With("charge.water fraction", Between(15, 50, "%"))
            .With("nozzle.throat", Between(9, 16, "mm")).With("vessel.length", Between(900, 1400, "mm"))
            .With("vessel.liner.bore", Between(60, 67, "mm")).With("body.fins.1.thickness", Between(1.5, 4, "mm")).ToText();
    }

    internal static async Task<Browser> OpenAsync()
    {
        var browser = await Browser.OpenAsync();
        await browser.Page.SetViewportSizeAsync(1280, 1000);
        await browser.Page.GotoAsync(Address);
        await ReadyAsync(browser.Page);
        return browser;
    }

    internal static Task ReadyAsync(IPage page) => UntilAsync(page, "document.documentElement.dataset.ready");

    // The page's own policy forbids the string that the driver's way of waiting would evaluate.
    internal static async Task UntilAsync(IPage page, string holds) => await page.EvaluateAsync("() => " + Waiting(holds))
        .WaitAsync(Patience.Limit);

    internal static string Waiting(string holds) =>
        "new Promise(done => { const look = () => (" + holds + ") ? done() : setTimeout(look, 30); look(); })";

    internal static async Task GoAsync(Browser browser, string part)
    {
        await browser.Page.EvaluateAsync("part => { location.hash = part; }", part);
        await UntilAsync(browser.Page, $"document.documentElement.dataset.part === '{part}'");
    }

    internal static async Task TypeAsync(Browser browser, string label, string value)
    {
        var field = browser.Page.GetByLabel(label, new() { Exact = true }).First;
        await field.FillAsync(value);
        await NextStateAsync(browser, () => field.PressAsync("Enter"));
    }

    internal static async Task NextStateAsync(Browser browser, Func<Task> act)
    {
        var before = await browser.Page.EvaluateAsync<int>("() => Number(document.documentElement.dataset.state)");
        await act();
        await UntilAsync(browser.Page, $"Number(document.documentElement.dataset.state) > {before}");
    }

    private static async Task TabToAsync(Browser browser, string label)
    {
        for (var i = 0; i < 60; i++)
        {
            await browser.Page.Keyboard.PressAsync("Tab");
            if (await browser.Page.EvaluateAsync<string>("() => document.activeElement?.labels?.[0]?.textContent ?? ''") == label) return;
        }

        Assert.Fail($"Sixty tabs don't reach {label}.");
    }

    private static async Task<string> SavedAsync(Browser browser)
    {
        var saved = await browser.Page.RunAndWaitForDownloadAsync(() => browser.Page.ClickAsync("#save"));
        return await File.ReadAllTextAsync(await saved.PathAsync());
    }
}
