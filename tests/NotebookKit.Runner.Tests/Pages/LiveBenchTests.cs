using Microsoft.Playwright;
using NotebookKit.DesignFiles;
using static NotebookKit.Runner.Tests.Pages.LivePageTests;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>The proof bench of the live page: readings typed step by step.</summary>
[Collection(LivePageOnce.Name), Trait("Length", "long")]
public sealed class LiveBenchTests(OpenedLivePage live)
{
    [SkippableFact]
    public async Task The_bench_says_hold_and_stop_by_the_librarys_rules()
    {
        var browser = await live.BeginAsync();
        await GoAsync(browser, "bench");
        var plan = Design.Parse(DesignText("curlew.json")).Stage.Proof.Plan();
        var first = plan.Steps[0];
        await browser.Page.FillAsync("#bench-bar", "1");
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Note the reading" }).ClickAsync();
        await browser.Page.WaitForSelectorAsync("#bench-call .error");
        Assert.Contains("Type what the gauge can't tell apart", await browser.Page.InnerTextAsync("#bench-call"), StringComparison.Ordinal);
        await browser.Page.EvaluateAsync("() => { keeping.data.bench.errorBar = '0.1'; keeping.data.bench.rows = []; keep(); }");
        await browser.Page.FillAsync("#bench-bar", first.Pressure.Bar.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture));
        await browser.Page.FillAsync("#bench-waterMl", "21");
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "The hold begins" }).ClickAsync();
        await browser.Page.WaitForSelectorAsync(".call.hold");
        await browser.Page.FillAsync("#bench-waterMl", "60");
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Note the reading" }).ClickAsync();
        await browser.Page.WaitForSelectorAsync(".call.stop");
        Assert.Contains("Vent from afar", await browser.Page.InnerTextAsync("#bench-call"), StringComparison.Ordinal);
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Judge the proof" }).ClickAsync();
        await browser.Page.WaitForSelectorAsync("#bench-verdict .error");
        Assert.Contains("There are 2 readings", await browser.Page.InnerTextAsync("#bench-verdict"), StringComparison.Ordinal);
        await browser.Page.ReloadAsync();
        await ReadyAsync(browser.Page);
        await browser.Page.WaitForSelectorAsync(".call.stop");
    }

    [SkippableFact]
    public async Task The_demo_proof_read_at_the_bench_is_accepted_and_its_saved_record_is_evidence_for_the_library()
    {
        var browser = await live.BeginAsync();
        await browser.Page.EvaluateAsync("""
            rows => { Object.assign(keeping.data.bench, { serial: "C-1", day: "2026-03-14", errorBar: "0.05", rows }); keep(); }
            """, DemoProof());
        await GoAsync(browser, "bench");
        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Judge the proof" }).ClickAsync();
        var save = browser.Page.GetByRole(AriaRole.Button, new() { Name = "Save the proof record" });
        var saved = await browser.Page.RunAndWaitForDownloadAsync(() => save.ClickAsync());
        var record = ProofRecord.FromJson(await File.ReadAllTextAsync(await saved.PathAsync()));
        Assert.Equal(ProofVerdict.Accept, record.Verdict);
        var proved = record.ToProvedVessel(Design.Parse(DesignText("curlew.json")).Rating);
        Assert.Contains($"Proves Curlew C-1: maximum fill pressure {proved.Allowed}.", await browser.Page.InnerTextAsync("#bench-verdict"),
            StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Tape_and_rule_typed_at_the_bench_stand_in_the_record()
    {
        var browser = await live.BeginAsync();
        await browser.Page.EvaluateAsync("""
            rows => { Object.assign(keeping.data.bench, { serial: "C-1", day: "2026-03-14", errorBar: "0.05",
              rows, girthWithinMm: "0.5", lengthWithinMm: "0.5" }); keep(); }
            """, DemoProof());
        await GoAsync(browser, "bench");
        await browser.Page.GetByText("Tape and rule").ClickAsync();
        foreach (var (what, values) in new[] { ("girth", new[] { "middle", "212.0", "212.8", "212.1" }),
            ("length", ["mark to mark", "1200.0", "1202.0", "1200.2"]) })
        {
            await browser.Page.GetByRole(AriaRole.Button, new() { Name = $"Add a {what}" }).ClickAsync();
            var one = char.ToUpperInvariant(what[0]) + what[1..];
            var labels = new[] { $"{one} at", $"{one} 1 before [mm]", $"{one} 1 at proof [mm]", $"{one} 1 after [mm]" };
            foreach (var (label, value) in labels.Zip(values))
            {
                await browser.Page.GetByLabel(label, new() { Exact = true }).FillAsync(value);
                await browser.Page.GetByLabel(label, new() { Exact = true }).PressAsync("Tab");
            }
        }

        await browser.Page.GetByRole(AriaRole.Button, new() { Name = "Judge the proof" }).ClickAsync();
        var save = browser.Page.GetByRole(AriaRole.Button, new() { Name = "Save the proof record" });
        var saved = await browser.Page.RunAndWaitForDownloadAsync(() => save.ClickAsync());
        var tape = ProofRecord.FromJson(await File.ReadAllTextAsync(await saved.PathAsync())).Readings.Tape!;
        Assert.Equal(("middle", 212.8), (tape.Girths[0].Station, Math.Round(tape.Girths[0].AtProof.Millimeters, 6)));
        Assert.Equal(("mark to mark", 1200.2), (tape.Lengths[0].Station, Math.Round(tape.Lengths[0].After!.Value.Millimeters, 6)));
    }

    // As somebody would type it: rows that the logger left out aren't there, water and vessel keep one temperature.
    private static object[] DemoProof() =>
        [.. File.ReadLines(Path.Combine(TestFolder.Repository, "data-demo", "curlew-proof.csv"))
            .Where(l => l.Length > 0 && char.IsAsciiDigit(l[0])).Select(l => l.Split(',')).Where(c => c[1].Length > 0)
            .Select(c => (object)new { s = Number(c[0]), bar = Number(c[1]), celsius = 17.6, waterMl = Number(c[3]) })];

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
