using Microsoft.Playwright;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using static NotebookKit.Runner.Tests.Pages.LivePageTests;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>The pad of the live page: the fill against the clock, and the card on what was shown.</summary>
[Collection(LivePageOnce.Name), Trait("Length", "long")]
public sealed class LivePadTests(OpenedLivePage live)
{
    [SkippableFact]
    public async Task The_card_of_a_design_alone_says_no_go_and_the_fill_has_its_clock()
    {
        var browser = await live.BeginAsync();
        await GoAsync(browser, "pad");
        await browser.Page.GetByLabel("Wind", new() { Exact = true }).FillAsync("4 m/s");
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Compute the fill and the card" }).ClickAsync();
        await browser.Page.WaitForSelectorAsync(".sheet .go");
        Assert.Contains("NO-GO", await browser.Page.Locator(".sheet .go").AllInnerTextsAsync());
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "The valve opens" }).ClickAsync();
        await UntilAsync(browser.Page, "/Expected now: [0-9.]+ bar gauge/.test(document.getElementById('fill-now-0').textContent)");
        Assert.Empty(browser.Problems);
    }

    [SkippableFact]
    public async Task With_proof_service_record_and_label_of_the_day_the_card_says_go_and_without_one_of_them_no()
    {
        var browser = await live.BeginAsync();
        using var folder = new TestFolder();
        var (proof, service, label) = Papers(folder);
        await GoAsync(browser, "pad");
        foreach (var (field, value) in new[] { ("Day", "2026-05-02"), ("Wind", "3 m/s"),
            ("Measured at a height of", "10 m"), ("Flight, as the club counts it", "first"),
            ("Serial, as on the vessel", "C-1"), ("Mark on its label", label), ("Wall at its warmest", "15 °C"),
            ("Water in the resin, if weighed", "0.5 %"), ("How the water was measured", "strip weighed and dried") })
        {
            await browser.Page.GetByLabel(field, new() { Exact = true }).FillAsync(value);
            await browser.Page.GetByLabel(field, new() { Exact = true }).PressAsync("Tab");
        }

        await browser.Page.GetByText("Parts that stand on the pad").ClickAsync();
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Name the parts" }).ClickAsync();
        await browser.Page.EvaluateAsync("() => { keeping.data.pad.gear.forEach((p, i) => Object.assign(p, "
            + "{ serial: 'P-' + i, 'rated to': '300 bar gauge' })); keep(); showPad(); }");
        await browser.Page.GetByLabel("Proof record").SetInputFilesAsync(proof);
        await browser.Page.GetByText("One is kept.").WaitForAsync();
        Assert.Equal("NO-GO", await VerdictAsync(browser));
        await browser.Page.GetByLabel("Service record").SetInputFilesAsync(service);
        await UntilAsync(browser.Page, "document.querySelectorAll('#pad-body small').length === 2");
        Assert.Equal("GO", await VerdictAsync(browser));
        await browser.KeepAsync("live-page-go-1280.png");

        // The day is the file that a club's folder has.
        var saved = await browser.Page.RunAndWaitForDownloadAsync(() => browser.Page.GetByRole(AriaRole.Button,
            new() { Name = "Save the file of the day" }).ClickAsync());
        var day = FlightDay.Read(await saved.PathAsync());
        Assert.Equal(("C-1", label, "site.wind.speed"), (day.Vessels[0].Serial, day.Vessels[0].Label, day.Changes[0].Name));
        await browser.Page.GetByLabel("Mark on its label", new() { Exact = true }).FillAsync("0000-0000");
        await browser.Page.GetByLabel("Mark on its label", new() { Exact = true }).PressAsync("Tab");
        Assert.Equal("NO-GO", await VerdictAsync(browser));
        await browser.Page.SetInputFilesAsync("#open-day", await saved.PathAsync());
        await UntilAsync(browser.Page, $"keeping.data.pad.stages[0].label === '{label}'");
        Assert.Equal("GO", await VerdictAsync(browser));
    }

    private static async Task<string> VerdictAsync(Browser browser)
    {
        await browser.Page.EvaluateAsync("() => document.getElementById('pad-answer').replaceChildren()");
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Compute the fill and the card" }).ClickAsync();
        await browser.Page.WaitForSelectorAsync("#pad-answer > .sheet .go");
        return await browser.Page.InnerTextAsync("#pad-answer > .sheet .go");
    }

    // The demo vessel's papers, as a club's folder has them.
    private static (string Proof, string Service, string Label) Papers(TestFolder folder)
    {
        Directory.CreateDirectory(folder["vessels"]);
        Directory.CreateDirectory(folder["tests"]);
        File.WriteAllText(folder["design.json"], DesignText("curlew.json"));
        var club = Logs.ClubFolder.Read(folder.Path);
        var record = club.Judge(Path.Combine(TestFolder.Repository, "data-demo", "curlew-proof.csv"));
        File.WriteAllText(folder["c1.proof.json"], record.ToJson());
        var stage = club.Design.Stage;
        var proved = record.ToProvedVessel(stage.Rating);
        var service = ServiceFile.Create(folder["c1.service.jsonl"], "Curlew", "C-1");
        static DateTimeOffset Morning(int month, int day) => new(2026, month, day, 8, 0, 0, TimeSpan.Zero);
        service.Append(new Made(new(2026, 2, 21), "batch 3") { At = Morning(2, 21) });
        service.Append(new Proved(proved.Day, proved.Held, stage.Rating.ProofPressure / stage.Rating.WorkingPressure,
            proved.RuleSet, proved.Fingerprint) { At = Morning(3, 15), Tests = stage.TestMarks });
        service.Append(new Inspected(InspectionResult.Sound) { At = Morning(5, 2) });
        return (folder["c1.proof.json"], folder["c1.service.jsonl"], ServiceFile.Read(folder["c1.service.jsonl"]).EndMark);
    }
}
