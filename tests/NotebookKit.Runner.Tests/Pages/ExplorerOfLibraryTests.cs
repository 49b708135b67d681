using System.Text.Json;
using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results;
using NotebookKit.DesignFiles;
using NotebookKit.Runner.Pages;
using static NotebookKit.Runner.Tests.Pages.LivePageTests;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>Explorers of a lesson's page that lies beside the live page are answered by the compiled library, not by the grid.</summary>
[Trait("Length", "long")]
public sealed class ExplorerOfLibraryTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [SkippableFact]
    public async Task Beside_the_live_page_every_setting_is_the_librarys_own_answer()
    {
        Skip.If(!File.Exists(LivePage.Built), "The program was built without the live page.");
        var design = Design.Parse(DesignText("curlew.json"));
        Explorer[] explorers = [design.ExploreFlight(), design.ExploreStability(), design.ExploreThrust(), design.ExploreFill(),
            design.ExploreDescent(), design.ExploreWall()];
        LivePage.CopyTo(folder["live.html"]);
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(PageOf(explorers, "../live.html"));
        for (var i = 0; i < explorers.Length; i++)
        {
            await browser.Page.EvaluateAsync($$"""
                document.querySelectorAll(".nk-explorer")[{{i}}].querySelectorAll("input").forEach((slider, d) => {
                  slider.value = 123 + 77 * d;
                  slider.dispatchEvent(new Event("input"));
                })
                """);
            await browser.Page.WaitForFunctionAsync($"document.querySelectorAll('.nk-explorer')[{i}].dataset.computed");
            using var computed = JsonDocument.Parse(await browser.Page.EvaluateAsync<string>(
                $"document.querySelectorAll('.nk-explorer')[{i}].dataset.computed"));
            double[] setting = Numbers(computed, "setting"), found = Numbers(computed, "numbers");
            var own = explorers[i].Model(setting);
            Assert.Equal("", own.RefusedBecause);
            Assert.Equal(own.Numbers.Count, found.Length);
            Assert.All(own.Numbers.Zip(found), n => Assert.InRange(n.Second, n.First - 1e-9 * Math.Abs(n.First),
                n.First + 1e-9 * Math.Abs(n.First)));
        }

        Assert.Equal(1, await browser.Page.Locator("iframe").CountAsync());
        Assert.Empty(browser.Problems);
        Assert.DoesNotContain(browser.Requests, r => r.StartsWith("http", StringComparison.OrdinalIgnoreCase));
    }

    [SkippableFact]
    public async Task A_page_by_itself_interpolates_and_holds_no_frame()
    {
        var explorer = Design.Parse(DesignText("curlew.json")).ExploreStability();
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(PageOf([explorer], library: null));
        await browser.Page.EvaluateAsync("""
            { const slider = document.querySelector(".nk-explorer input"); slider.value = 123; slider.dispatchEvent(new Event("input")); }
            """);
        Assert.Equal(0, await browser.Page.Locator("iframe").CountAsync());
        Assert.True(await browser.Page.Locator(".nk-explorer-error").IsVisibleAsync());
        Assert.Empty(browser.Problems);
    }

    private string PageOf(IReadOnlyList<Explorer> explorers, string? library)
    {
        Directory.CreateDirectory(folder["pages"]);
        File.WriteAllText(folder["pages", "lesson.html"], new PageFrame("Explorers").Write(string.Concat(explorers.Select(e => e.ToHtml()))
            + $"<script>{ExplorerScript.Text}</script>", hasCharts: false, single: library is null, library));
        return new Uri(folder["pages", "lesson.html"]).AbsoluteUri;
    }

    private static double[] Numbers(JsonDocument of, string name) =>
        [.. of.RootElement.GetProperty(name).EnumerateArray().Select(n => n.GetDouble())];
}
